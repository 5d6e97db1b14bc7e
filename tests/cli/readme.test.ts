import { expect, test } from 'vitest';
import { readme, withExample } from './readme-example.ts';
import { folderOf, retare } from './retare.ts';

const text = readme();
const post = ':::ingredients{kitchen=us}\n- 1 cup milk\n- 1½ large eggs\n:::\n\n:::method\nStir.\n:::\n';
const commands = [...text.matchAll(/^ {4}retare (.*)$/gm)].map(([, command]) => command ?? '');

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

test('the README shows what its draft prints (else run `node tests/cli/readme-write.ts`, and look at what changed)', () => {
  expect(withExample(text)).toBe(text);
});

const subcommands = [
  ['check', ['--kitchen <ids>', '--format <format>']],
  ['read', ['--format <format>']],
  ['draft', ['--for <ids>', '--anchor <food>', '--write', '--format <format>']],
  ['larder list', ['--kitchen <id>', '--format <format>', '--role <role>']],
  ['larder find', ['--kitchen <id>', '--format <format>']],
  ['larder show', ['--kitchen <id>', '--format <format>']],
  ['larder changes', ['--kitchen <id>', '--format <format>']],
] as const;

test.for(subcommands)('the README names every option of `%s`', ([command, taken]) => {
  const { out } = retare([...command.split(' '), '--help'], folderOf({}));
  const options = [...out.matchAll(/^ {2}(--\w+(?: <\w+>)?)/gm)].map(([, option = '']) => option);
  expect(options.sort()).toEqual([...taken].sort());
  const [own = ''] = command.split(' ');
  const section = text.split('\n### ').find((each) => each.startsWith(`${own}\n`)) ?? '';
  expect(options.filter((option) => !section.includes(`\`${option}\``))).toEqual([]);
});

/** Every key of what a command prints as JSON. */
function keysOf(command: string): Set<string> {
  const keys = new Set<string>();
  JSON.parse(retare([...command.split(' '), '--format', 'json'], folderOf({ 'post.md': post })).out, (key, value) => {
    if (key !== '' && !/^\d+$/u.test(key)) keys.add(key);
    return value;
  });
  return keys;
}

test.for(['check post.md', 'read post.md'])('the README names every key of the JSON of `%s`', (command) => {
  const section = text.split('\n### ').find((each) => each.startsWith(`${command.split(' ')[0]}\n`)) ?? '';
  const keys = [...keysOf(command)];
  expect(keys.length).toBeGreaterThan(8);
  expect(keys.filter((key) => !section.includes(`\`${key}\``))).toEqual([]);
});

/** A post with a stand-in, a pan, an oven, a core temperature and a runner-up, and one with no version. */
const posts = {
  'whole.md': `---\nretare:\n  makes: 4 servings\n---\n\n:::ingredients{kitchen=us}\n- 2 (15-oz) cans butter beans\n- 1–1½ cups half-and-half\n- ½ lb kale\n:::\n\n:::method\nHeat to :oven[400°F]; bake in a :pan[8×8 in] to :core[165°F]{of=casserole}.\n:::\n`,
  'none.md': ':::ingredients{kitchen=us}\n- ⅓ cup canned black beans\n- 1 cup corn\n:::\n',
};

test('the README names every key of the JSON', () => {
  const { out } = retare(['draft', 'whole.md', 'none.md', '--for', 'uk', '--format', 'json'], folderOf(posts));
  const keys = new Set<string>();
  JSON.parse(out, (key, value) => {
    if (key !== '' && !/^\d+$/u.test(key)) keys.add(key);
    return value;
  });
  expect([...keys]).toEqual(expect.arrayContaining(['standIn', 'runnerUp', 'changes', 'because', 'pans', 'hold']));
  expect([...keys].filter((key) => !text.includes(`\`${key}\``))).toEqual([]);
});

test('every number of the JSON is a decimal string, line numbers aside', () => {
  const { out } = retare(['draft', 'whole.md', 'none.md', '--for', 'uk,au', '--format', 'json'], folderOf(posts));
  const numbers: string[] = [];
  JSON.parse(out, (key, value) => {
    if (typeof value === 'number') numbers.push(key);
    return value;
  });
  expect(new Set(numbers)).toEqual(new Set(['line']));
});
