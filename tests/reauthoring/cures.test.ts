import { Exact, isRefusal, type Reauthored, reauthor, type Setting } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { type Post, recipeOf, rulesOf, textOf, versionOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';
import { setting } from './setting.js';

function worked(post: Post, to: string, within: Setting): Reauthored {
  const result = reauthor(recipeOf(post, within), to, within);
  if (isRefusal(result)) throw new Error(result.kind);
  return result;
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
});
