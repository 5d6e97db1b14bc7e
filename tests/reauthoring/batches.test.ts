import { defaultWeights, type Food, type Reauthored, type ReauthorOptions } from '@retare/core';
import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf } from './recipe-of.js';
import { foodOf, larderOf, soldAs } from './sample-food.js';

/** Tins that are used whole, and by the cup where they are written. */
function tinsOf(...sizes: readonly number[]): Food {
  return foodOf({ uk: soldAs(sizes.map((size) => ({ size, whole: 'yes' }))), any: soldAs([], { loose: true }) });
}

function worked(line: string, food: Food, options: ReauthorOptions = {}): Reauthored {
  const within = larderOf(food);
  return reauthoredOf(recipeOf({ kitchen: 'eu', lines: [line] }, within), 'uk', within, options);
}

describe('a batch', () => {
  test.for([
    { line: '500 g gloop', factor: 0.8 },
    { line: '320 g gloop', factor: 1.25 },
    { line: '360 g gloop', factor: 1.1111 },
    { line: '440 g gloop', factor: 0.9091 },
  ])('that is over 15 % off costs more, larger or smaller: $line in tins of 400 g', ({ line, factor }) => {
    const costAt = (farBatch: number): number => {
      const result = worked(line, tinsOf(400), { anchor: 'gloop', weights: { ...defaultWeights, farBatch } });
      expect(result.version.batchFactor.toNumber()).toBeCloseTo(factor, 4);
      return result.cost;
    };
    expect(costAt(0.5) - costAt(0)).toBeCloseTo(Math.abs(factor - 1) > 0.15 ? 0.5 : 0, 9);
  });

  test('that costs the same as the native size is not taken', () => {
    const weights = { ...defaultWeights, batch: 0 };
    const { version, runnerUp, cost } = worked('400 g gloop', tinsOf(400, 440), { weights });
    expect([version.batchFactor.toNumber(), runnerUp?.batchFactor, runnerUp?.cost]).toEqual([1, 1.1, cost]);
  });

  test('a hundredth larger is another one, and the runner-up', () => {
    const { version, runnerUp } = worked('1000 g gloop', tinsOf(1000, 1010));
    expect([version.batchFactor.toNumber(), runnerUp?.batchFactor]).toEqual([1, 1.01]);
  });

  test('of a named anchor has a far one for its runner-up, where none is near', () => {
    const { version, runnerUp } = worked('850 g gloop', tinsOf(400), { anchor: 'gloop' });
    expect(version.batchFactor.toNumber()).toBeCloseTo(800 / 850, 6);
    expect(runnerUp?.batchFactor).toBeCloseTo(1200 / 850, 6);
  });

  test.for([
    { line: '500 g gloop', cautions: [{ kind: 'bake', changed: 'batch' }] },
    { line: '320 g gloop', cautions: [{ kind: 'bake', changed: 'batch' }] },
    { line: '440 g gloop', cautions: [] },
  ])('that is over 15 % off bakes in another time, larger or smaller: $line', ({ line, cautions }) => {
    expect(worked(line, tinsOf(400), { anchor: 'gloop' }).version.cautions).toMatchObject(cautions);
  });
});
