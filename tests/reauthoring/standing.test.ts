import { versionFor } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { type Block, recipeOf, versionOf } from './recipe-of.js';
import { setting } from './setting.js';

const flour = { kitchen: 'us', lines: ['1 cup flour'] };
const uk: Block = { kitchen: 'uk', lines: ['125 g plain flour'] };
const cookedOn = (cooked: string): Block => ({ ...uk, cooked });

describe('the standing of a version', () => {
  test.for([
    { versions: [], to: 'us', standing: 'native', cooked: null },
    { versions: [], to: 'uk', standing: 'converted', cooked: null },
    { versions: [uk], to: 'uk', standing: 're-authored', cooked: null },
    { versions: [cookedOn('2026-05-01')], to: 'uk', standing: 'cooked', cooked: '2026-05-01' },
    { versions: [cookedOn('2026-05-01')], to: 'au', standing: 'converted', cooked: null },
  ])('in $to with versions $versions is $standing', ({ versions, to, standing, cooked }) => {
    const version = versionOf({ ...flour, versions }, to);
    expect([version.standing, version.cooked]).toEqual([standing, cooked]);
  });

  /** Two parts, each with versions of its own. */
  const ofParts = (...parts: Block[][]) => {
    const recipes = parts.map((versions) => recipeOf({ ...flour, versions }));
    const [first] = recipes;
    if (first === undefined) throw new RangeError('No part.');
    return versionFor({ ...first, parts: recipes.flatMap((recipe) => recipe.parts) }, 'uk', setting);
  };

  test.for<[Block[], Block[], string, string | null]>([
    [[cookedOn('2026-05-01')], [], 'converted', null],
    [[uk], [], 'converted', null],
    [[cookedOn('2026-05-01')], [uk], 're-authored', null],
    [[cookedOn('2026-05-01')], [cookedOn('2026-03-01')], 'cooked', '2026-03-01'],
  ])('of two parts is that of the less finished: %j and %j', ([one, other, standing, cooked]) => {
    const version = ofParts(one, other);
    expect([version.standing, version.cooked]).toEqual([standing, cooked]);
    expect(version.parts).toHaveLength(2);
  });

  test('of a preserve is native everywhere, even where an author wrote a version', () => {
    const version = versionOf({ ...flour, versions: [uk], preserve: true }, 'uk');
    expect([version.standing, version.parts[0]?.lines[0]?.line.text]).toEqual(['native', '1 cup flour']);
  });
});

describe('a version', () => {
  test('that an author wrote is judged in its own kitchen, word for word', () => {
    const [line] =
      versionOf({ ...flour, versions: [{ kitchen: 'uk', lines: ['1 quart milk'] }] }, 'uk').parts[0]?.lines ?? [];
    expect([line?.line.text, line?.edits, line?.problems[0]?.problem]).toMatchObject([
      '1 quart milk',
      [],
      { rule: 'unmeasurable', reason: 'no-unit' },
    ]);
  });

  test('has batch factor 1 until it is re-authored', () => {
    expect(versionOf(flour, 'uk').batchFactor.toString()).toBe('1');
  });

  test('for a kitchen that nobody set up is a caller’s fault', () => {
    expect(() => versionOf(flour, 'mars')).toThrow(RangeError);
  });

  test('of a cure cautions about it', () => {
    const { cautions } = versionOf({ kitchen: 'us', lines: ['¼ oz pink curing salt'] }, 'uk');
    expect(cautions).toEqual([{ kind: 'cure' }]);
  });
});

describe('the method of a version', () => {
  const post = { ...flour, versions: [uk], methodVersions: [{ kitchen: 'au', mentions: [] }] };

  test.for([
    ['us', 'us'],
    ['uk', 'us'],
    ['au', 'au'],
  ] as const)('in %s is the one written for %s', ([to, from]) => {
    expect(versionOf(post, to).steps.map((steps) => steps.from)).toEqual([from]);
  });
});
