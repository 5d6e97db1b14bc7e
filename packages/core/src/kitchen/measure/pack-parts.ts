import type { Term } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import type { Kitchen } from '../kitchen.js';
import { soldIn } from '../shop/buy.js';
import { areOtherThanUsual } from '../shop/unsized-pack.js';
import { type Measure, sized } from './measure.js';

/** Parts of a pack that a cook finds by eye, with their awkwardness. Common practice, no source. */
const parts: readonly { part: Exact; awkwardness: 0 | 1 }[] = [
  { part: new Exact('0.25'), awkwardness: 1 },
  { part: new Exact(1).dividedBy(3), awkwardness: 1 },
  { part: new Exact('0.5'), awkwardness: 0 },
  { part: new Exact(2).dividedBy(3), awkwardness: 1 },
  { part: new Exact('0.75'), awkwardness: 1 },
];

/** Nobody buys more packs of one food for a dish. */
const mostPacks = 8;
/** Past so many whole packs nobody opens another for a part of it. */
const mostBesideAPart = 2;

/**
 * Packs as measures, where there is nothing at home to weigh with and the shop has weighed them: whole ones, and of what is divided by
 * eye parts too, half a box of spaghetti.
 *
 * @returns Ascending, from half of `grams` to twice as much, and past it to the next whole pack.
 */
export function packMeasures(grams: Exact, food: Food, kitchen: Kitchen): Measure[] {
  const sold = soldIn(food, kitchen.id);
  // Half of the usual pack is no third of a larger one.
  return measuresOf(grams, food, kitchen, (pack) => sold !== null && !areOtherThanUsual(pack, 1, sold));
}

function measuresOf(grams: Exact, food: Food, kitchen: Kitchen, isDivided: (pack: Pack) => boolean): Measure[] {
  if (kitchen.scale !== null) return [];
  const { packs } = soldIn(food, kitchen.id) ?? { packs: [] };
  const whole = packs.flatMap((pack) => wholePacks(pack, grams));
  const divided = packs
    .filter((pack) => dividesByEye(food, pack) && isDivided(pack))
    .flatMap((pack) => partsOf(pack, grams, food));
  // A small pack is taken before half of one twice as large.
  const others = divided.filter(({ size }) => !whole.some((each) => each.size.equals(size)));
  return [...whole, ...others].sort((a, b) => a.near - b.near);
}

/** Whether a weight is one that a cook gets at by dividing a pack by eye. */
export function isPartOfPack(grams: Exact, food: Food | null, kitchen: Kitchen, within: Exact): boolean {
  if (food === null || food.byEye === null || kitchen.scale !== null) return false;
  return measuresOf(grams, food, kitchen, () => true).some(({ size }) =>
    size.dividedBy(grams).minus(1).abs().lessThanOrEqualTo(within),
  );
}

/** The least that a cook divides off a pack of a food of which nobody fills a cup; null of any other food. */
export function leastByEye(food: Food, kitchen: Kitchen): Exact | null {
  if (food.byEye !== 'only' || kitchen.scale !== null) return null;
  const packs = (soldIn(food, kitchen.id)?.packs ?? []).filter((pack) => dividesByEye(food, pack));
  const least = parts[0]?.part ?? new Exact(1);
  return packs.length === 0 ? null : Exact.min(...packs.map((pack) => pack.grams.times(least)));
}

/** What is cut by marks is not divided by eye, and of what is counted pieces are taken. */
function dividesByEye({ byEye }: Food, { marks, unit }: Pack): boolean {
  return byEye !== null && marks === null && unit !== 'count';
}

function wholePacks(pack: Pack, grams: Exact): Measure[] {
  const packs = grams.dividedBy(pack.grams).toNumber();
  const from = Math.max(1, Math.floor(packs / 2));
  const to = Math.min(Math.ceil(packs * 2), mostPacks);
  return Array.from({ length: Math.max(to - from + 1, 0) }, (_, at) => measureOf(pack, new Exact(from + at), 0));
}

/** Of what a cup measures as well, no whole packs and a part are counted out. */
function partsOf(pack: Pack, grams: Exact, { byEye }: Food): Measure[] {
  const most = byEye === 'only' ? mostBesideAPart : 0;
  const wholes = Array.from({ length: most + 1 }, (_, at) => at);
  return wholes
    .flatMap((whole) =>
      parts.map(({ part, awkwardness }) => measureOf(pack, part.plus(whole), whole === 0 ? awkwardness : 2)),
    )
    .filter(({ size }) => size.times(2).greaterThanOrEqualTo(grams) && size.lessThanOrEqualTo(grams.times(2)));
}

function measureOf(pack: Pack, count: Exact, awkwardness: Measure['awkwardness']): Measure {
  const terms: Term[] = [{ low: count, high: null, unit: 'count' }];
  return { way: 'pack', terms, pack, base: 'g', ...sized(pack.grams.times(count)), awkwardness };
}
