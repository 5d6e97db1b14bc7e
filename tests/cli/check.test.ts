import { describe, expect, test } from 'vitest';
import { folderOf, retare } from './retare.ts';

const post = (...lines: string[]): string =>
  `:::ingredients{kitchen=us}\n${lines.map((line) => `- ${line}\n`).join('')}:::\n`;
const good = post('1 cup milk', '2 large eggs');
const bad = post('1 cup milk', '1½ large eggs');
const colour = String.fromCharCode(27);

describe('retare check', () => {
  test('ends with 0 where nothing is wrong', () => {
    const { status, out, err } = retare(['check', 'a.md', '--kitchen', 'us'], folderOf({ 'a.md': good }));
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^1 post, 2 amounts, 1 kitchen: 0 errors, 0 warnings, \d+\.\d s\n$/);
  });

  test('ends with 1 where there are errors, and says where and what', () => {
    const { status, out } = retare(['check', 'a.md', '--kitchen', 'us'], folderOf({ 'a.md': bad }));
    expect(status).toBe(1);
    expect(out.split('\n').slice(0, 3)).toEqual([
      'a.md',
      '  3:3    error   US shops sell eggs whole, so `1½` of them cannot be bought. Write `1` or `2` (unbuyable)',
      '',
    ]);
    expect(out).toMatch(/1 post, 2 amounts, 1 kitchen: 1 error, 0 warnings/);
  });

  test('shows no colours where there is no terminal', () => {
    expect(retare(['check', 'a.md'], folderOf({ 'a.md': bad })).out).not.toContain(colour);
  });

  test('writes JSON that a tool can read', () => {
    const { status, out } = retare(['check', 'a.md', '--kitchen', 'us', '--format', 'json'], folderOf({ 'a.md': bad }));
    expect(status).toBe(1);
    expect(JSON.parse(out)).toEqual([
      {
        file: 'a.md',
        line: 3,
        column: 3,
        endLine: 3,
        endColumn: 5,
        rule: 'unbuyable',
        severity: 'error',
        kitchens: ['us'],
        message: 'US shops sell eggs whole, so `1½` of them cannot be bought. Write `1` or `2`',
        actual: '1½',
        expected: ['1', '2'],
        note: null,
      },
    ]);
  });

  test('writes an empty list where nothing was found', () => {
    const { status, out } = retare(
      ['check', 'a.md', '--kitchen', 'us', '--format', 'json'],
      folderOf({ 'a.md': good }),
    );
    expect([status, JSON.parse(out)]).toEqual([0, []]);
  });

  test('limits the check to the kitchens that are named', () => {
    const folder = folderOf({ 'a.md': post('½ (15-oz) can butter beans') });
    const kitchensOf = (ids: string): string[][] =>
      (
        JSON.parse(retare(['check', 'a.md', '--kitchen', ids, '--format', 'json'], folder).out) as {
          kitchens: string[];
        }[]
      ).map(({ kitchens }) => kitchens);
    expect(kitchensOf('us')).toEqual([['us']]);
    expect(kitchensOf('uk')).toEqual([['uk']]);
    expect(kitchensOf('us, uk')).toEqual([['us'], ['uk']]);
  });

  test('reads folders and globs, each post once', () => {
    const folder = folderOf({
      'posts/a.md': good,
      'posts/b/c.mdx': good,
      'posts/d.txt': bad,
      'node_modules/x/e.md': bad,
    });
    const { status, out } = retare(['check', 'posts', 'posts/*.md', '--kitchen', 'us'], folder);
    expect(status).toBe(0);
    expect(out).toMatch(/^2 posts, 4 amounts/);
  });

  test('follows the settings of the site that a post belongs to', () => {
    const folder = folderOf({
      'retare.yaml': 'kitchens: [us]\nseverity:\n  unbuyable: warning\n',
      'posts/a.md': bad,
    });
    const { status, out } = retare(['check', 'posts/a.md'], folder);
    expect(status).toBe(0);
    expect(out).toContain('1 kitchen: 0 errors, 1 warning');
  });
});

describe('retare check ends with 2 and checks nothing', () => {
  test.for([
    {
      why: 'a file that is not there',
      args: ['check', 'b.md'],
      err: /^There is no post at `b\.md`\. Nothing was checked\.\n$/,
    },
    {
      why: 'a kitchen that is not there',
      args: ['check', 'a.md', '--kitchen', 'us,gb'],
      err: /There is no kitchen `gb`.*`us`.*Nothing was checked/s,
    },
    { why: 'an option that is not there', args: ['check', 'a.md', '--kitchens', 'us'], err: /--kitchens/ },
    { why: 'a format that is not there', args: ['check', 'a.md', '--format', 'xml'], err: /text, json/ },
    { why: 'no file', args: ['check'], err: /files/ },
    { why: 'a command that is not there', args: ['chekc', 'a.md'], err: /chekc/ },
  ])('for $why', ({ args, err }) => {
    const result = retare(args, folderOf({ 'a.md': bad }));
    expect([result.status, result.out]).toEqual([2, '']);
    expect(result.err).toMatch(err);
    expect(result.err).not.toMatch(/\n {4}at /);
  });

  test.for([
    { why: 'a key of no use', yaml: 'kitchens: [us]\nkitchn: us\n', err: /^retare\.yaml:2:1 .*`kitchn`/ },
    {
      why: 'a value of no use',
      yaml: 'kitchens: [us]\ntolerance: 5%\n',
      err: /^retare\.yaml:2:12 .*from 0 to 1.*`0\.05`/,
    },
    { why: 'a kitchen that is not there', yaml: 'kitchens: [us, gb]\n', err: /^retare\.yaml:1:16 .*`gb`.*`uk`/ },
    { why: 'no YAML', yaml: 'kitchens: [us\n', err: /^retare\.yaml:\d+:\d+ / },
  ])('for settings with $why', ({ yaml, err }) => {
    const result = retare(['check', 'a.md'], folderOf({ 'retare.yaml': yaml, 'a.md': bad }));
    expect([result.status, result.out]).toEqual([2, '']);
    expect(result.err).toMatch(err);
    expect(result.err).toContain('Nothing was checked.');
  });
});

test('`--help` ends with 0 and names the commands', () => {
  const { status, out } = retare(['--help'], folderOf({}));
  expect(status).toBe(0);
  expect(out).toContain('check');
});
