import { defaultWeights } from '@retare/core';
import { defaultSettings, readSettings, ruleNames } from '@retare/larder';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const found = (text: string) =>
  readSettings(text, 'retare.yaml').problems.map(
    ({ path, line, column, message }) => `${path}:${line}:${column} ${message}`,
  );

describe('settings', () => {
  test.for(['', '\n', '# nothing yet\n', 'kitchens:\n', '{}'])('%j gives the defaults', (text) => {
    expect(readSettings(text, 'retare.yaml')).toEqual({ settings: defaultSettings, problems: [] });
  });

  test('are read by every key', () => {
    const text = `
kitchens: [us, uk]
kitchen: uk
must-hold: [us]
severity: { unbuyable: error, ask-preserve: off }
tolerance: 0.1
reauthoring: { weights: { leftover-fresh: 0.02, pan: 0 }, limits: { baking-small: 0.08 } }
posts: [posts/**/*.md]
`;
    expect(readSettings(text, 'retare.yaml')).toEqual({
      settings: {
        kitchens: ['us', 'uk'],
        kitchen: 'uk',
        mustHold: ['us'],
        severity: { unbuyable: 'error', 'ask-preserve': 'off' },
        tolerance: 0.1,
        reauthoring: {
          ...defaultWeights,
          leftoverFresh: 0.02,
          pan: 0,
          limits: { ...defaultWeights.limits, bakingSmall: 0.08 },
        },
        larder: null,
        posts: ['posts/**/*.md'],
      },
      problems: [],
    });
  });

  test('keep a tolerance of 0', () => {
    expect(readSettings('tolerance: 0', 'retare.yaml').settings.tolerance).toBe(0);
  });

  test.for(ruleNames)('take a severity for %s', (rule) => {
    expect(readSettings(`severity: { ${rule}: warning }`, 'retare.yaml').settings.severity).toEqual({
      [rule]: 'warning',
    });
  });
});

const mistakes = [
  {
    text: 'kitchens: [us, uk]\n\ntolerance: 5%\n',
    says: 'retare.yaml:3:12 `tolerance` takes a fraction from 0 to 1, not `5%`. Write `0.05`',
  },
  {
    text: 'reauthoring:\n  weights: { awkward: -1 }\n',
    says: 'retare.yaml:2:23 `awkward` takes a number, 0 or above, not `-1`',
  },
  {
    text: 'reauthoring: { limits: { salt: 10% } }',
    says: 'retare.yaml:1:32 `salt` takes a fraction from 0 to 1, not `10%`. Write `0.1`',
  },
  {
    text: 'reauthoring: { limits: { bakingSmall: 0.1 } }',
    says: 'retare.yaml:1:26 `bakingSmall` is no key of `limits`. Write `baking-small`',
  },
  {
    text: 'reauthoring: { weight: {} }',
    says: 'retare.yaml:1:16 `weight` is no key of `reauthoring`. Write `weights`',
  },
  { text: 'tolerance: 5', says: 'retare.yaml:1:12 `tolerance` takes a fraction from 0 to 1, not `5`' },
  {
    text: 'tolerance: 12.5 %',
    says: 'retare.yaml:1:12 `tolerance` takes a fraction from 0 to 1, not `12.5 %`. Write `0.125`',
  },
  {
    text: 'kitchen: gb',
    says: 'retare.yaml:1:10 There is no kitchen `gb`. Use `us`, `ca`, `uk`, `eu`, `au`, `nz`, `us-scale`, or one from your larder file',
  },
  {
    text: 'kitchens:\n  - us\n  - gb\n',
    says: 'retare.yaml:3:5 There is no kitchen `gb`. Use `us`, `ca`, `uk`, `eu`, `au`, `nz`, `us-scale`, or one from your larder file',
  },
  {
    text: 'must-hold: [uk]\nkitchens: [us]',
    says: 'retare.yaml:1:13 `must-hold` names `uk`, which is not served. Add it to `kitchens`, or leave it out',
  },
  { text: 'kitchens: us', says: 'retare.yaml:1:11 `kitchens` takes a list, not `us`' },
  { text: 'kitchens: []', says: 'retare.yaml:1:11 `kitchens` takes at least one kitchen, not a list' },
  { text: 'must_hold: [us]', says: 'retare.yaml:1:1 `must_hold` is no key here. Write `must-hold`' },
  {
    text: 'colour: red',
    says: 'retare.yaml:1:1 `colour` is no key here. Use `kitchens`, `kitchen`, `must-hold`, `severity`, `tolerance`, `reauthoring`, `larder` or `posts`',
  },
  {
    text: 'severity:\n  underdon: error',
    says: 'retare.yaml:2:3 `underdon` is no key of `severity`. Write `underdone`',
  },
  {
    text: 'severity: { underdone: fatal }',
    says: 'retare.yaml:1:24 `underdone` takes `error`, `warning` or `off`, not `fatal`',
  },
  { text: 'severity: error', says: 'retare.yaml:1:11 `severity` takes a block of keys, not `error`' },
  { text: 'larder: [a, b]', says: 'retare.yaml:1:9 `larder` takes words, not a list' },
  { text: '- us', says: 'retare.yaml:1:1 This file takes a block of keys, not a list' },
  { text: 'us', says: 'retare.yaml:1:1 This file takes a block of keys, not `us`' },
] as const;

describe('bad settings', () => {
  test.for(mistakes)('$text: $says', ({ text, says }) => {
    expect(found(text)).toEqual([says]);
  });

  test('name the place of a mistake of YAML itself', () => {
    expect(found('kitchens: [us, uk\nkitchen: uk\n')[0]).toMatch(/^retare\.yaml:2:\d+ This cannot be read as YAML: /);
  });

  test('do not take the good ones with them', () => {
    const { settings } = readSettings('tolerance: 5%\nkitchen: uk\n', 'retare.yaml');
    expect(settings).toEqual({ ...defaultSettings, kitchen: 'uk' });
  });

  test('list what is allowed', () => {
    expect(readSettings('severity: { underdone: fatal }', 'retare.yaml').problems[0]?.allowed).toEqual([
      'error',
      'warning',
      'off',
    ]);
  });

  test('come in the order of their lines', () => {
    const { problems } = readSettings('posts: x\ncolour: red\nkitchen: gb\ntolerance: 5%\n', 'retare.yaml');
    expect(problems.map(({ line }) => line)).toEqual([1, 2, 3, 4]);
  });

  test('never throw, whatever the file holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'kitchens: [us]\n-{}&*!|>%@`"\'#,?\t0.5') }), (text) => {
        const { problems } = readSettings(text, 'retare.yaml');
        for (const { line, column, message } of problems) {
          expect(line).toBeGreaterThan(0);
          expect(column).toBeGreaterThan(0);
          expect(message).not.toBe('');
        }
      }),
      { numRuns: 500 },
    );
  });

  test.for([
    'a: &a [*a, *a]\n',
    'a: *missing\n',
    '? [x, y]\n: 1\n',
    '__proto__: 1\n',
    'severity: { __proto__: error }\n',
    '!!js/function x: y\n',
    '\0',
  ])('%j is a problem, not a crash', (text) => {
    expect(readSettings(text, 'retare.yaml').problems).not.toEqual([]);
  });

  test('are refused where aliases multiply without end', () => {
    const lines = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]'];
    for (let level = 1; level < 9; level += 1)
      lines.push(
        `a${level}: &a${level} [${Array(10)
          .fill(`*a${level - 1}`)
          .join(', ')}]`,
      );
    expect(readSettings(lines.join('\n'), 'retare.yaml').problems[0]?.message).toMatch(/^This cannot be read as YAML/);
  });
});
