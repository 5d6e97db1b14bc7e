import type { Food, Kitchen } from '@retare/core';
import {
  anchorReach,
  type Candidate,
  candidatesFor,
  ofAnEgg,
  otherEgg,
  ownReach,
  type Reach,
  seldomEgg,
  wholePacks,
} from './optimum-candidates.ts';
import { soldFor } from './optimum-kinds.ts';
import { kitchens } from './optimum-larder.ts';
import type { SmallRecipe, Wanted } from './optimum-recipes.ts';

/** What a full product over all candidates comes to. */
export interface BruteForce {
  /** Cost of the cheapest that keeps all ratios; null where nothing does. */
  best: number | null;
  /** Cost of the cheapest with the ratios left aside. */
  free: number | null;
  /** Which ratios the cheapest breaks then. */
  bent: string[];
  /** How many ratios couple several lines. */
  coupling: number;
  /** Combinations that were looked at. */
  looks: number;
}

/** A food that has to be had, with all that is worth writing for it. */
interface Need {
  food: Food;
  grams: number;
  weight: number;
  list: Candidate[];
  setsBatch: boolean;
  step: number;
  /** Native foods that it serves. */
  serves: string[];
  /** All of it is served beside the dish. */
  beside: boolean;
  /** Eggs of which the author's number is served, whatever they weigh. */
  loose: boolean;
}

interface Ratio {
  name: string;
  above: number[];
  below: number[];
  native: number;
  /** Over the whole: what is in it is no more guarded for that. */
  ofWhole: boolean;
  limit: number;
  /** Half a step of the tool, in grams; 0 where only the limit counts. */
  halfStep: number;
  /** Grams above in the native recipe. */
  grams: number;
}

const widest = 0.35;
const roundingErrors = 1e-9;

/**
 * The cheapest version of a small recipe, found by trying every combination of every line's candidates at every batch factor.
 *
 * @param cutoff Combinations dearer than this are not followed further.
 */
export function bruteForce(
  recipe: SmallRecipe,
  kitchen: Kitchen,
  foods: ReadonlyMap<string, Food>,
  cutoff: number,
): BruteForce {
  const result: BruteForce = { best: null, free: null, bent: [], coupling: 0, looks: 0 };
  if (recipe.wanted.filter(({ food, beside }) => food.id in ofAnEgg && !beside).length < 2)
    return inKitchen(recipe, kitchen, foods, cutoff, 0, result);
  // All eggs of one size, which costs once; of several only where no one size keeps the ratios.
  const { sizes, usual } = kitchen.eggs;
  for (const size of sizes) {
    const once = size.name === usual ? 0 : size.seldom ? seldomEgg : otherEgg;
    const own = { ...kitchen, eggs: { ...kitchen.eggs, usual: size.name, sizes: [size] } };
    inKitchen(recipe, own, foods, cutoff, once, result);
  }
  return result.best === null ? inKitchen(recipe, kitchen, foods, cutoff, 0, result) : result;
}

/** @param once What every combination costs beside its lines. */
function inKitchen(
  recipe: SmallRecipe,
  kitchen: Kitchen,
  foods: ReadonlyMap<string, Food>,
  cutoff: number,
  once: number,
  result: BruteForce,
): BruteForce {
  const { needs, ratios } = partsOf(recipe, kitchen, foods);
  result.coupling = ratios.filter(({ above, below }) =>
    above.some((each, at) => each > 0 !== (below[at] ?? 0) > 0),
  ).length;
  const pans = panCosts(recipe, kitchen);
  const within = { cutoff, once, pans };
  if (recipe.anchor !== null) return anchored(recipe.anchor, { needs, ratios, kitchen }, within, result);
  const setters = needs.filter(({ setsBatch, beside }) => setsBatch && !beside);
  tryAll(needs, ratios, 1, within, result);
  for (const need of setters) {
    // Whole packs or pieces that set the batch are those that are written.
    for (const { batch, candidate } of factorsOf(need, 3 / 4, 4 / 3))
      tryAll(
        needs.map((each) => (each === need ? { ...need, list: [candidate] } : each)),
        ratios,
        batch,
        within,
        result,
      );
  }
  if (setters.length > 0) return result;
  // Whether the native size gives any version at all, however dear, of these eggs.
  const any: BruteForce = { ...result, best: null };
  tryAll(needs, ratios, 1, { ...within, cutoff: Number.POSITIVE_INFINITY }, any, 'any');
  if (any.best !== null) return result;
  for (const batch of new Set(
    needs.filter(({ beside }) => !beside).flatMap((need) => factorsOf(need, 0.85, 1.15).map((each) => each.batch)),
  ))
    tryAll(needs, ratios, batch, within, result);
  return result;
}

/** What every combination is tried within. */
interface Within {
  cutoff: number;
  once: number;
  pans: (batch: number) => number;
}

/** Only the anchor's own packs set the batch: near the native size, or, where none of those gives a version, from half to twice of it. */
function anchored(
  anchor: Food,
  { needs, ratios, kitchen }: { needs: readonly Need[]; ratios: readonly Ratio[]; kitchen: Kitchen },
  within: Within,
  result: BruteForce,
): BruteForce {
  const need = needs.find(({ serves }) => serves.includes(anchor.id));
  if (need === undefined) return result;
  const own = { ...need, list: setBy(need, { anchor }, kitchen) };
  for (const [least, most] of [
    [3 / 4, 4 / 3],
    [1 / 2, 2],
  ] as const) {
    if (result.best !== null) return result;
    for (const { batch, candidate } of factorsOf(own, least, most))
      tryAll(
        needs.map((each) => (each === need ? { ...own, list: [candidate] } : each)),
        ratios,
        batch,
        within,
        result,
      );
  }
  return result;
}

/** An anchor comes in whole packs, even where it is not used whole. */
function setBy(need: Need, { anchor }: Pick<SmallRecipe, 'anchor'>, kitchen: Kitchen): Candidate[] {
  const sold = soldFor(need.food, kitchen.id);
  if (anchor === null || !need.serves.includes(anchor.id) || need.setsBatch || sold === null) return need.list;
  return wholePacks(need.food, sold, { ...need, unit: 'pack' }).list;
}

/** Needs and ratios of every part: nothing but the batch couples two parts. */
function partsOf(
  recipe: SmallRecipe,
  kitchen: Kitchen,
  foods: ReadonlyMap<string, Food>,
): { needs: Need[]; ratios: Ratio[] } {
  const needs: Need[] = [];
  const ratios: Ratio[] = [];
  const reach = recipe.anchor === null ? ownReach : anchorReach;
  for (const part of [0, 1]) {
    const own = needsOf(
      { ...recipe, wanted: recipe.wanted.filter((each) => each.part === part) },
      kitchen,
      foods,
      reach,
    );
    const ownRatios = ratiosOf(own, kitchen, foods);
    weigh(own, ownRatios);
    const before = needs.map(() => 0);
    const padded = ownRatios.map((ratio) => ({
      ...ratio,
      above: [...before, ...ratio.above],
      below: [...before, ...ratio.below],
    }));
    needs.push(...own);
    ratios.push(...padded);
  }
  return { needs, ratios };
}

/**
 * What the pans cost at a batch: of the round ones there the nearest base that holds it. Another number of pans is taken only where the
 * batter would stand a tenth too deep or too shallow in any one, and where that is cheaper.
 */
function panCosts({ pan, native }: SmallRecipe, kitchen: Kitchen): (batch: number) => number {
  if (pan === null) return () => 0;
  const cm = (size: { toString(): string } | null, unit: string): number =>
    Number(size ?? Number.NaN) * (unit === 'in' ? 2.54 : 1);
  const unit = native === 'us' || native === 'ca' ? 'in' : 'cm';
  const side = cm(pan, unit);
  // A cake is baked in no pie dish and on no sheet, nor in what is far from the base that is written.
  const rounds = roundsOf(kitchens.get(native));
  const written = rounds.find((each) => Math.abs((cm(each.sides[0] ?? null, each.unit) / side) ** 2 - 1) < 0.02);
  const rim = written === undefined ? Number.NaN : cm(written.depth, written.unit);
  const here = roundsOf(kitchen).filter((each) => {
    const base = (cm(each.sides[0] ?? null, each.unit) / side) ** 2;
    return cm(each.depth, each.unit) >= 2.6 && [1, 2].some((count) => base * count >= 0.6 && base * count <= 1 / 0.6);
  });
  if (here.length === 0) return () => 0;
  // Where none holds it, that of the nearest rim.
  const [nearestRim] = [...here].sort(
    (a, b) => Math.abs(cm(a.depth, a.unit) - rim) - Math.abs(cm(b.depth, b.unit) - rim),
  );
  const fallback = (batch: number): number =>
    0.3 * Math.log((cm(nearestRim?.sides[0] ?? null, nearestRim?.unit ?? 'cm') / side) ** 2 / batch) ** 2;
  const nearest = (counts: readonly number[], batch: number): { cost: number; deeper: number } | null => {
    const all = here.flatMap((each) =>
      counts.flatMap((count) => {
        const base = (cm(each.sides[0] ?? null, each.unit) / side) ** 2 * count;
        if (count < 1 || cm(each.depth, each.unit) < ((2 / 3) * rim * batch) / base) return [];
        return [{ cost: 0.3 * Math.log(base / batch) ** 2 + 0.02 * Math.abs(count - 1), deeper: batch / base - 1 }];
      }),
    );
    return all.sort((a, b) => a.cost - b.cost)[0] ?? null;
  };
  return (batch) => {
    const one = nearest([1], batch);
    if (one !== null && Math.abs(one.deeper) <= 0.1) return one.cost;
    const two = nearest([2], batch);
    if (one === null && two === null) return fallback(batch);
    return Math.min(one?.cost ?? Number.POSITIVE_INFINITY, two?.cost ?? Number.POSITIVE_INFINITY);
  };
}

function roundsOf(kitchen: Kitchen | undefined): Kitchen['pans'] {
  return kitchen?.pans.filter(({ shape, name }) => shape === 'round' && !/pie|tart|flan|quiche/.test(name)) ?? [];
}

function factorsOf({ list, grams }: Need, least: number, most: number): { batch: number; candidate: Candidate }[] {
  return list
    .map((candidate) => ({ batch: candidate.grams / grams, candidate }))
    .filter(({ batch }) => batch >= least - 1e-9 && batch <= most + 1e-9);
}

function needsOf(
  recipe: Pick<SmallRecipe, 'wanted'>,
  kitchen: Kitchen,
  foods: ReadonlyMap<string, Food>,
  reach: Reach,
): Need[] {
  const needs: (Omit<Need, 'list' | 'setsBatch' | 'step' | 'loose'> & { wanted: Wanted; standsIn: boolean })[] = [];
  for (const wanted of recipe.wanted) {
    const sold = soldFor(wanted.food, kitchen.id);
    const instead = sold?.sold === false ? sold.standIns[0]?.parts : undefined;
    const parts = instead ?? [{ food: wanted.food.id, share: 1 }];
    for (const { food: id, share } of parts) {
      const food = foods.get(id) ?? wanted.food;
      const grams = wanted.grams * Number(share);
      const same = needs.find((need) => need.food === food && (need.standsIn || instead !== undefined));
      if (same === undefined) {
        const standsIn = instead !== undefined;
        needs.push({ food, grams, weight: 0, serves: [wanted.food.id], beside: wanted.beside, wanted, standsIn });
        continue;
      }
      if (instead === undefined) same.wanted = wanted;
      same.beside &&= wanted.beside;
      same.grams += grams;
      same.serves.push(wanted.food.id);
    }
  }
  return needs.map(({ wanted, standsIn: _, ...need }) => {
    const loose = need.beside && need.food.id in ofAnEgg && wanted.unit === 'count';
    const found = candidatesFor(need.food, kitchen, { ...wanted, food: need.food, grams: need.grams }, reach);
    return { ...need, loose, ...found, ...(loose ? { list: [{ grams: need.grams, fixed: 0 }] } : {}) };
  });
}

/** How much of each gram of a food counts as a role, its contents counted apart. */
function share(food: Food, foods: ReadonlyMap<string, Food>, counts: (food: Food) => boolean): number {
  let [sum, rest] = [0, 1];
  for (const content of food.contains) {
    const inside = foods.get(content.food);
    if (inside === undefined) continue;
    rest -= Number(content.share);
    if (counts(inside)) sum += Number(content.share);
  }
  return sum + (counts(food) ? rest : 0);
}

function ratiosOf(needs: readonly Need[], kitchen: Kitchen, foods: ReadonlyMap<string, Food>): Ratio[] {
  const ratios: Ratio[] = [];
  const of = (counts: (food: Food) => boolean): number[] =>
    needs.map(({ food, loose }) => (loose ? 0 : share(food, foods, counts)));
  const grams = (side: readonly number[]): number =>
    needs.reduce((sum, need, at) => sum + need.grams * (side[at] ?? 0), 0);
  const guard = (name: string, above: number[], below: number[], limit: number, orHalfStep: boolean): void => {
    if (grams(above) < 1e-9 || grams(below) < 1e-9) return;
    const step = orHalfStep ? Math.max(...needs.map((need, at) => need.step * (above[at] ?? 0))) / 2 : 0;
    ratios.push({
      name: step > limit * grams(above) ? `${name}, by half a step` : name,
      above,
      below,
      native: grams(above) / grams(below),
      ofWhole: below === whole,
      limit,
      halfStep: step,
      grams: grams(above),
    });
  };
  const whole = needs.map(({ loose, beside }) => (loose || beside ? 0 : 1));
  // What is served beside the dish is no part of its dough, nor of what sets.
  const inDough = (side: number[]): number[] => side.map((each, at) => (needs[at]?.beside ? 0 : each));
  const flour = inDough(of(({ role }) => role === 'flour'));
  const liquid = inDough(of(({ role }) => role === 'liquid'));
  if (grams(flour) >= 0.15 * grams(whole) && grams(flour) > 0) {
    for (const food of foods.values())
      if (food.role === 'leavening') guard('leavening', inDough(of((each) => each === food)), flour, 0.1, true);
    guard('egg', inDough(of(({ role }) => role === 'egg')), flour, 0.12, false);
    for (const own of served(needs, foods, ['liquid', 'sugar', 'fat']).map(inDough)) {
      const wide = kitchen.scale === null ? 0.06 : 0.03;
      const small = grams(own) < 0.1 * grams(flour);
      guard(
        small ? 'a little' : kitchen.scale === null ? 'by volume' : 'by weight',
        own,
        flour,
        small ? 0.1 : wide,
        false,
      );
    }
  }
  guard('salt', inDough(of(({ role }) => role === 'salt')), whole, 0.1, true);
  for (const own of served(needs, foods, ['seasoning']).map(inDough)) guard('seasoning', own, whole, 0.1, true);
  guard('gelling', inDough(of(({ role }) => role === 'gelling')), liquid, 0.05, true);
  return ratios;
}

/** For each native food of these roles what serves it, salt and leavening left out. */
function served(needs: readonly Need[], foods: ReadonlyMap<string, Food>, roles: readonly string[]): number[][] {
  const ids = new Set(needs.flatMap(({ serves }) => serves).filter((id) => roles.includes(foods.get(id)?.role ?? '')));
  return [...ids].map((id) =>
    needs.map(({ serves, food }) =>
      serves.includes(id) ? share(food, foods, ({ role }) => role !== 'salt' && role !== 'leavening') : 0,
    ),
  );
}

function weigh(needs: readonly Need[], ratios: readonly Ratio[]): void {
  needs.forEach((need, at) => {
    const guarded = ratios.some(
      ({ above, below, ofWhole }) => (above[at] ?? 0) > 0 || ((below[at] ?? 0) > 0 && !ofWhole),
    );
    need.weight = guarded ? (need.food.role === 'egg' ? 2 : 3) : 1;
    if (need.food.role === 'seasoning') need.weight = 0.3;
    if (need.food.role === 'salt') need.weight = 1;
    if (need.beside) need.weight = 0;
    // What no tool comes near to weighs less: the nearest costs what a drift of the limit does.
    const nearest = Math.min(widest, ...need.list.map(({ grams }) => Math.abs(Math.log(grams / need.grams))));
    const told = ratios.filter(({ above, halfStep }) => (above[at] ?? 0) > 0 && halfStep > 0);
    need.weight *= Math.min(1, ...told.map(({ limit }) => (limit / Math.max(limit, nearest)) ** 2));
  });
}

function tryAll(
  needs: readonly Need[],
  ratios: readonly Ratio[],
  batch: number,
  { cutoff, once, pans }: Within,
  result: BruteForce,
  wanted: 'the cheapest' | 'any' = 'the cheapest',
): void {
  // A batch over 15 % off bakes in another time.
  const size = once + 0.2 * Math.log(batch) ** 2 + (Math.abs(batch - 1) > 0.15 + 1e-9 ? 0.005 : 0) + pans(batch);
  const costs = needs.map(({ list, grams, weight, beside }) =>
    list.map((each) => {
      const drift = Math.log(each.grams / (grams * batch));
      // What the dish does without stands in no way.
      if (Math.abs(drift) > widest && !beside) return Number.POSITIVE_INFINITY;
      return weight === 0 ? 0 : weight * drift * drift + each.fixed;
    }),
  );
  const cheapest = costs.reduce((sum, each) => sum + Math.min(...each), size);
  const chosen = new Array<number>(needs.length).fill(0);
  if (cheapest < (result.free ?? Number.POSITIVE_INFINITY)) {
    result.free = cheapest;
    const freely = needs.map(
      ({ list }, at) => list[costs[at]?.indexOf(Math.min(...(costs[at] ?? []))) ?? 0]?.grams ?? 0,
    );
    result.bent = ratios.filter((ratio) => !isKept(ratio, freely, batch)).map(({ name }) => name);
  }
  const keep = (): boolean => ratios.every((ratio) => isKept(ratio, chosen, batch));
  const next = (at: number, cost: number): void => {
    if (wanted === 'any' && result.best !== null) return;
    if (at === needs.length) {
      result.looks += 1;
      if (keep()) result.best = cost;
      return;
    }
    needs[at]?.list.forEach(({ grams }, index) => {
      const sum = cost + (costs[at]?.[index] ?? 0);
      // Costs only add up: what is dearer than the best so far stays so.
      if (sum > cutoff || sum >= (result.best ?? Number.POSITIVE_INFINITY)) return;
      chosen[at] = grams;
      next(at + 1, sum);
    });
  };
  next(0, size);
}

/**
 * What a version costs by the amounts that stand in it, weighed by hand from what is on the page.
 *
 * @param gramsOf Of a food in a part; null where it has none.
 * @returns One cost for each way of buying the eggs; none where an amount is no candidate, or a ratio is broken.
 */
export function costsOf(
  recipe: SmallRecipe,
  kitchen: Kitchen,
  foods: ReadonlyMap<string, Food>,
  batch: number,
  gramsOf: (food: Food) => number | null,
): number[] {
  const { sizes, usual } = kitchen.eggs;
  const eggs = recipe.wanted.filter(({ food, beside }) => food.id in ofAnEgg && !beside);
  const ways = [
    { once: 0, own: kitchen },
    ...(eggs.length < 2 ? [] : sizes).map((size) => ({
      once: size.name === usual ? 0 : size.seldom ? seldomEgg : otherEgg,
      own: { ...kitchen, eggs: { ...kitchen.eggs, usual: size.name, sizes: [size] } },
    })),
  ];
  return ways.flatMap(({ once, own }) => {
    const { needs, ratios } = partsOf(recipe, own, foods);
    // A pinch weighs nothing on the page: half of the smallest spoon.
    const chosen = needs.map(({ food, list }) => gramsOf(food) ?? list.find(({ pinch }) => pinch)?.grams ?? Number.NaN);
    let cost = once + 0.2 * Math.log(batch) ** 2 + panCosts(recipe, own)(batch);
    if (Math.abs(batch - 1) > 0.15 + 1e-9) cost += 0.005;
    for (const [at, need] of needs.entries()) {
      const { grams, weight, loose } = need;
      const written = chosen[at] ?? Number.NaN;
      if (weight === 0 && loose) continue;
      // Four large eggs may weigh as much as five small ones.
      const same = setBy(need, recipe, own).filter((each) => Math.abs(each.grams / written - 1) < 1e-6);
      if (same.length === 0) return [];
      const fixed = Math.min(...same.map((each) => each.fixed));
      if (weight > 0) cost += weight * Math.log(written / (grams * batch)) ** 2 + fixed;
    }
    return ratios.every((ratio) => isKept(ratio, chosen, batch)) ? [cost] : [];
  });
}

function isKept(
  { above, below, native, limit, halfStep, grams }: Ratio,
  chosen: readonly number[],
  batch: number,
): boolean {
  let [up, down] = [0, 0];
  for (let at = 0; at < chosen.length; at++) {
    up += (above[at] ?? 0) * (chosen[at] ?? 0);
    down += (below[at] ?? 0) * (chosen[at] ?? 0);
  }
  // Half a step counts where it is more than the limit in a batch of that size.
  const most = halfStep > limit * grams * batch ? halfStep : limit * native * down;
  return down > 0 && Math.abs(up - native * down) <= most + roundingErrors * 10 * Math.max(1, native * down);
}
