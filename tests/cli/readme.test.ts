import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { folderOf, retare } from './retare.ts';

const readme = readFileSync(new URL('../../packages/cli/README.md', import.meta.url), 'utf8');
const post = ':::ingredients{kitchen=us}\n- 1 cup milk\n- 1½ large eggs\n:::\n\n:::method\nStir.\n:::\n';
const commands = [...readme.matchAll(/^ {4}retare (.*)$/gm)].map(([, command]) => command ?? '');

test('the README has commands', () => {
  expect(commands.length).toBeGreaterThan(4);
});

test.for(commands)('`retare %s` runs', (command) => {
  const folder = folderOf({ 'post.md': post, 'src/content/posts/a.md': post });
  const { status, out, err } = retare(command.split(' '), folder);
  expect(err).toBe('');
  expect(status).toBe(command.startsWith('check') ? 1 : 0);
  expect(out).not.toBe('');
});
