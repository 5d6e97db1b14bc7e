import { describe, expect, test } from 'vitest';
import type { Constraint } from '../../packages/core/src/reauthor/ratio/constraint.ts';
import { CoupledSearch } from '../../packages/core/src/reauthor/search/coupled-search.ts';
import type { Demand } from '../../packages/core/src/reauthor/search/demand.ts';
import { cheapest } from '../../packages/core/src/reauthor/search/search.ts';
import type { Ranked } from '../../packages/core/src/reauthor/search/window.ts';
import { worked } from '../growth.ts';
import { numbersFrom } from './optimum-recipes.ts';

const nothing = Number.POSITIVE_INFINITY;

/** Choices of a line around a need, in steps: a little off is cheap, far off is dear. */
function line(need: number, step: number, weight: number): Ranked[] {
  const ranked: Ranked[] = [];
  for (let grams = step; grams < need * 1.45; grams += step) {
    const drift = Math.log(grams / need);
    const choice = { size: grams, log: Math.log(grams), grams, fixed: 0, index: ranked.length };
    if (Math.abs(drift) <= 0.35) ranked.push({ choice, cost: weight * drift * drift });
  }
  return ranked.sort((a, b) => a.cost - b.cost);
}

interface Part {
  needs: number[];
  lines: Ranked[][];
  limits: Constraint[];
}

/**
 * A batter: what is held to the first line, as sugar to flour, and what is held to all together, as salt to the whole.
 *
 * @param fine How many times finer the steps are.
 */
function part(random: () => number, lines: number, salts: number, fine: number): Part {
  const needs = Array.from({ length: lines }, (_, at) =>
    at === 0 ? 400 + random() * 200 : at > lines - 1 - salts ? 4 + random() * 8 : 60 + random() * 200,
  );
  const ranked = needs.map((need, at) =>
    line(need, at > lines - 1 - salts ? (2 + random() * 2) / fine : (15 + random() * 20) / fine, at === 0 ? 3 : 1),
  );
  const limits = needs.slice(1).flatMap((need, index) => {
    const at = index + 1;
    const ofWhole = at > lines - 1 - salts;
    const below = ofWhole ? needs.map(() => 1) : needs.map((_, each) => (each === 0 ? 1 : 0));
    const native = need / needs.reduce((sum, each, where) => sum + each * (below[where] ?? 0), 0);
    return [1, -1].map((side): Constraint => {
      const coefficients = Float64Array.from(needs, (_, each) => {
        const above = each === at ? 1 : 0;
        return side * (above - native * (1 + side * (ofWhole ? 0.1 : 0.04)) * (below[each] ?? 0));
      });
      return { coefficients, bound: 1e-9, ratio: index };
    });
  });
  return { needs, lines: ranked, limits };
}

/** The cheapest of all combinations that keep the limits, tried one by one. */
function ofAll({ lines, limits }: Part): number {
  let best = nothing;
  const chosen = lines.map(() => 0);
  const next = (at: number, cost: number): void => {
    if (cost >= best) return;
    if (at === lines.length) {
      const kept = limits.every(
        ({ coefficients, bound }) =>
          coefficients.reduce((sum, each, where) => sum + each * (chosen[where] ?? 0), 0) <= bound,
      );
      if (kept) best = cost;
      return;
    }
    for (const { choice, cost: own } of lines[at] ?? []) {
      chosen[at] = choice.grams;
      next(at + 1, cost + own);
    }
  };
  next(0, 0);
  return best;
}

describe('the search for what is coupled tightly', () => {
  const random = numbersFrom(7);
  const parts = Array.from({ length: 300 }, (_, at) => part(random, 4 + (at % 3), at % 2, 1));
  const found = parts.map(({ lines, limits }) => new CoupledSearch(lines, limits, nothing).run());
  const best = parts.map(ofAll);

  test('finds what costs as little as the cheapest of all combinations, or nothing where none keeps the limits', () => {
    const costs = found.map((each) => (each?.cost ?? nothing).toFixed(9));
    expect(costs).toEqual(best.map((each) => each.toFixed(9)));
    expect(best.filter((each) => each === nothing).length).toBeGreaterThan(20);
    expect(best.filter((each) => each < nothing).length).toBeGreaterThan(100);
  });

  test('chooses what it says it costs, and keeps every limit', () => {
    for (const [at, { lines, limits }] of parts.entries()) {
      const choices = found[at]?.choices;
      if (choices === undefined) continue;
      const cost = choices.reduce(
        (sum, choice, each) => sum + (lines[each]?.find((one) => one.choice === choice)?.cost ?? nothing),
        0,
      );
      expect(cost).toBeCloseTo(found[at]?.cost ?? 0, 9);
      for (const { coefficients, bound } of limits)
        expect(
          coefficients.reduce((sum, each, where) => sum + each * (choices[where]?.grams ?? 0), 0),
        ).toBeLessThanOrEqual(bound + 1e-9);
    }
  });

  test('gives up on what costs no less than is known already', () => {
    for (const [at, { lines, limits }] of parts.entries()) {
      const least = best[at] ?? nothing;
      if (least === nothing) continue;
      expect(new CoupledSearch(lines, limits, least).run()).toBeNull();
      expect(new CoupledSearch(lines, limits, least * 1.01 + 1e-9).run()?.cost).toBeCloseTo(least, 9);
    }
  });
});

/** A demand as the search sees one. */
function demandOf(need: number, ranked: readonly Ranked[], weight: number): Demand {
  const choices = ranked
    .map(({ choice }) => choice)
    .sort((a, b) => a.size - b.size)
    .map((choice, index) => ({ ...choice, index }));
  return { quantity: need, weight, choices } as unknown as Demand;
}

// The plain search alone works for minutes on some of them.
describe.for([20, 30, 40])('a part of %d lines, held to its flour and five to the whole', (lines) => {
  const random = numbersFrom(lines);
  const parts = [2, 2, 2, 2, 2, 4, 4, 4].map((fine) => part(random, lines, 5, fine));

  test('takes some hundred steps', () => {
    const steps = parts.map((each) => {
      const search = new CoupledSearch(each.lines, each.limits, nothing);
      search.run();
      return search.steps;
    });
    expect(Math.max(...steps)).toBeLessThan(2000);
  });

  test('takes no more time than a few hundred steps ask, even where a machine is busy', () => {
    const times = parts.map(({ needs, lines: ranked, limits }) => {
      const demands = needs.map((need, at) => demandOf(need, ranked[at] ?? [], at === 0 ? 3 : 1));
      return Math.min(...[1, 2].map(() => worked(() => cheapest(demands, limits, 1, nothing))));
    });
    expect(Math.max(...times)).toBeLessThan(2000);
  });
});
