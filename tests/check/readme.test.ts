import { readFileSync } from 'node:fs';
import * as check from '@retare/check';
import { checkPost, jsonReport, textReport } from '@retare/check';
import { loadSettings, ruleNames } from '@retare/larder';
import { expect, test } from 'vitest';

const readme = readFileSync(new URL('../../packages/check/README.md', import.meta.url), 'utf8');
const blocks = (language: string): string[] =>
  readme.split('```').flatMap((text) => (text.startsWith(`${language}\n`) ? [text.slice(language.length + 1)] : []));

test('the README shows code that gives what it says', () => {
  const code = (blocks('js')[0] ?? '')
    .replace(/^import .*$/gm, '')
    .replace(/^(jsonReport.*); \/\/ (.*)$/m, 'seen.push([$1, $2]);')
    .replace(/^(textReport.*);$/m, 'seen.push([$1, text]);');
  const seen: [unknown, unknown][] = [];
  const given = { checkPost, jsonReport, textReport, loadSettings, seen, text: blocks('text')[0]?.trimEnd() };
  new Function(...Object.keys(given), code)(...Object.values(given));
  expect(seen).toHaveLength(2);
  for (const [value, said] of seen) expect(value).toEqual(said);
});

test('the README names every rule and every export', () => {
  const named = (name: string): boolean => readme.includes(`\`${name}`);
  expect([...ruleNames, ...Object.keys(check)].filter((name) => !named(name))).toEqual([]);
});
