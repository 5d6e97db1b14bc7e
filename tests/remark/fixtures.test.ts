import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { htmlOf, serving } from './pipeline.ts';

const folder = new URL('fixtures/', import.meta.url);

/** One element a line, so that a change can be read. */
const inLines = (html: string): string =>
  `${html
    .replace(/(?=<(?:span data|option|li|details|\/?div|p|\/ul|\/ol))/g, '\n')
    .replace(/\n+/g, '\n')
    .trim()}\n`;

test.for(readdirSync(folder))('%s', async (name) => {
  const input = readFileSync(new URL(`${name}/input.md`, folder), 'utf8');
  const html = htmlOf(input, { options: serving('us', 'uk', 'eu') });
  await expect(inLines(html)).toMatchFileSnapshot(`fixtures/${name}/output.html`);
});
