import {
  Exact,
  type Reauthored,
  type Recipe,
  type Setting,
  type Version,
  type VersionLine,
  versionFor,
} from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeInPost } from './recipe-in-post.js';
import { type Post, recipeOf, rulesOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

function worked(post: Post, to: string, within: Setting): Reauthored {
  return reauthoredOf(recipeOf(post, within), to, within);
}

const textsOf = ({ version }: Reauthored): string[] => version.parts.flatMap(({ lines }) => lines.map(textOf));
const one = new Exact(1);
const source = 'made up for a test';
const gone = soldAs([], { sold: false });

describe('a cure', () => {
  test.for([
    { standIns: [], by: 'nothing takes its place' },
    // 400 g are in reach of no 5 g: a stand-in would leave no version.
    { standIns: [{ parts: [{ food: 'glop', share: 1 }] }], by: 'a larder lets another food take its place' },
  ])('that no shop there sells stands in no version’s way, where $by', ({ standIns }) => {
    const names = standIns.map(({ parts }) => ({ parts: parts.map(({ food }) => ({ food, share: one })), source }));
    const cure = foodOf({ us: soldAs([]), any: { ...gone, standIns: names } }, { role: 'cure' });
    const glop = foodOf({ any: soldAs([{ size: 400, whole: 'yes' }]) }, { id: 'glop' });
    const result = worked({ kitchen: 'us', lines: ['5 g gloop'] }, 'uk', larderOf(cure, glop));
    expect([result.infeasible, textsOf(result)]).toEqual([null, ['5 g gloop']]);
  });

  test('is named to nobody as another food to buy, though a larder lets it take the same place', () => {
    const place = ['glub', 'gloop', 'glop'].map((food) => ({ parts: [{ food, share: one }], source }));
    const foods = [
      foodOf({ us: soldAs([]), any: { ...gone, standIns: place } }, { id: 'glurp' }),
      foodOf({ us: soldAs([]), any: gone }, { id: 'glub' }),
      foodOf({ any: soldAs([{ size: 100 }]) }, { id: 'gloop', role: 'cure' }),
      foodOf({ any: soldAs([{ size: 100 }]) }, { id: 'glop' }),
    ];
    const { infeasible } = worked({ kitchen: 'us', lines: ['1 cup glub'] }, 'uk', larderOf(...foods));
    expect(infeasible?.leastChange).toMatchObject([{ kind: 'food', instead: { id: 'glop' } }]);
  });

  test('is weighed as its recipe says where no scale stands: no spoon of it is offered', () => {
    const [line] = versionOf({ kitchen: 'us', lines: ['3 g pink curing salt'] }, 'us', setting).parts[0]?.lines ?? [];
    expect(line === undefined ? null : rulesOf(line)).toEqual([]);
  });

  test.each(['3 g pink curing salt', '3 g each sugar and pink curing salt', '2 bay leaves plus 3 g pink curing salt'])(
    'is spoken of on the page wherever in its line it stands: %s',
    (line) => {
      const { cautions } = versionOf({ kitchen: 'us', lines: ['1 lb pork shoulder', line] }, 'uk', setting);
      expect(cautions).toContainEqual({ kind: 'cure' });
    },
  );
});

// A pound is 453.6 g.
describe('what a cure is measured for goes up wherever it is said', () => {
  const post = (cure: string): string =>
    `:::ingredients{kitchen=us}\n- 4 lb pork belly, plus 1 lb for the second day\n${cure}:::\n\n:::method\nTurn :amount[1 lb]{of="pork shoulder"} over.\n:::\n`;
  const without = recipeInPost(post(''));
  const beside = recipeInPost(post('- 5 g pink curing salt\n'));
  const amountIn = (version: Version): string => version.steps[0]?.mentions.map(({ text }) => text).join() ?? '';

  test('in the words behind a line’s amount', () => {
    expect(textOf(versionFor(without, 'uk', setting).parts[0]?.lines[0] as VersionLine)).toContain('plus 450 g');
    for (const version of [versionFor(beside, 'uk', setting), reauthored(beside, 'uk')])
      expect(gramsIn(textOf(version.parts[0]?.lines[0] as VersionLine), /plus (\d+) g/u)).toBeGreaterThanOrEqual(453.6);
  });

  test('in a step, though no line lists it', () => {
    expect(amountIn(versionFor(without, 'uk', setting))).toBe('450 g');
    for (const version of [versionFor(beside, 'uk', setting), reauthored(beside, 'uk')])
      expect(gramsIn(amountIn(version), /(\d+) g/u)).toBeGreaterThanOrEqual(453.6);
  });

  function gramsIn(text: string, figure: RegExp): number {
    return Number(figure.exec(text)?.[1]);
  }

  function reauthored(recipe: Recipe, kitchen: string): Version {
    const result = reauthoredOf(recipe, kitchen, setting);
    return result.version;
  }
});
