import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import * as remark from 'remark-retare';
import { unified } from 'unified';
import { expect, test } from 'vitest';
import { readIn } from './pipeline.ts';

const readme = readFileSync(new URL('../../packages/remark/README.md', import.meta.url), 'utf8');
const block = (language: string): string => readme.split(`\`\`\`${language}\n`)[1]?.split('```')[0] ?? '';

test('the README shows code that makes a page of its post', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'retare-readme-'));
  writeFileSync(join(folder, 'post.md'), block('markdown'));
  const code = block('js')
    .replace(/^import .*$/gm, '')
    .replace("'post.md'", 'path');
  const given = { readFileSync, rehypeStringify, remarkParse, remarkRehype, remarkRetare: remark.default, unified };
  const run = new Function(...Object.keys(given), 'path', `return (async () => {${code}; return html; })();`);
  const file = (await run(...Object.values(given), join(folder, 'post.md'))) as { messages: unknown[] };
  expect(file.messages).toEqual([]);
  expect(readIn('uk', String(file))).toContain('225 ml double cream');
  expect(readIn('us', String(file))).toContain('1 cup heavy cream');
});

test('the README names every annotation, attribute and export', () => {
  const attributes = Object.values(remark.annotations).flatMap((shape) => Object.keys(shape.attributes));
  const names = [...Object.keys(remark.annotations), ...attributes, ...Object.keys(remark)];
  expect(names.filter((name) => name !== 'default' && !new RegExp(`[\`#:]${name}\\b`).test(readme))).toEqual([]);
});
