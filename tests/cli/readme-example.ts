import { readFileSync } from 'node:fs';
import { folderOf, retare } from './retare.ts';

/** The command's README. */
export const readmeUrl = new URL('../../packages/cli/README.md', import.meta.url);

/** The README with what its example of `draft` prints now. */
export function withExample(readme: string): string {
  const [, post = ''] = /```markdown\n([\s\S]*?)```/u.exec(readme) ?? [];
  const command = /`retare (draft post\.md --for \w+)` as\n/u.exec(readme)?.[1] ?? '';
  const { out } = retare(command.split(' '), folderOf({ 'post.md': post }));
  return readme.replace(/(` as\n\n```text\n)[\s\S]*?```/u, (_, before: string) => `${before}${out}\`\`\``);
}

/** The README as it stands. */
export function readme(): string {
  return readFileSync(readmeUrl, 'utf8');
}
