import { dimensionOf } from '../../amount/size.js';
import type { Stated } from '../../amount/stated.js';
import { type Exact, sumOf } from '../../exact.js';
import type { Food, Pack, Sold } from '../../food/food.js';
import type { Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { type Bought, buy, soldIn } from '../../kitchen/shop/buy.js';
import { counterSteps } from '../../kitchen/shop/counter.js';
import { samePack } from '../convert/whole-packs.js';
import { isLabelled } from '../weigh/weigh-packs.js';

/**
 * What a cook buys for an amount as it is written: the packs or pieces that it counts, else those with the least left over of its weight.
 *
 * @param weighed What the amount weighs there, a range by its lower end.
 * @returns Null for what is bought singly or comes from the tap, and where its weight is not known.
 */
export function shopFor(stated: Stated, weighed: Weighed, food: Food, kitchen: Kitchen): Bought | null {
  const sold = soldIn(food, kitchen.id);
  const counted = stated.statements[0]?.[0];
  if (sold === null || sold.tap || counted === undefined) return null;
  const { grams } = weighed;
  // Who may use three buys three.
  const most = counted.high ?? counted.low;
  if (stated.pack !== null) {
    const pack = packOnShelf(stated, weighed, food, sold);
    if (pack !== null) return packsOf(pack, most);
  } else if (dimensionOf(counted.unit) === 'count') {
    if (sold.singly) return null;
    const pieces = piecePacks(sold, counted.unit);
    if (pieces !== null) return piecesOf(pieces, most, kitchen);
  }
  if (grams === null || grams.isZero()) return null;
  return buy(grams.times(most).dividedBy(counted.low), sold, ...stepsOf(kitchen));
}

/** The pack that a line counts, or the equal one that the shops have. */
function packOnShelf({ pack, statements }: Stated, { grams }: Weighed, food: Food, sold: Sold): Pack | null {
  const count = statements[0]?.[0]?.low;
  if (pack === null || pack.word === '' || count === undefined || count.isZero()) return null;
  const labelled = sold.packs.find((each) => isLabelled(each, pack, food));
  return labelled ?? (grams === null ? null : samePack(grams.dividedBy(count), sold));
}

/** Whole packs; of the last one a half may be left. */
function packsOf(pack: Pack, count: Exact): Bought {
  const whole = count.ceil();
  const leftoverGrams = whole.minus(count).times(pack.grams);
  return { packs: [{ count: whole.toNumber(), pack }], looseGrams: null, leftoverGrams };
}

/** Packs that count pieces, and the same shelf with a gram for each piece: a dozen tortillas are a dozen whatever they weigh. */
interface PiecePacks {
  packs: Pack[];
  byPieces: Sold;
}

const known = new WeakMap<Sold, Map<string, PiecePacks | null>>();

/**
 * The packs of a shelf that count pieces of a unit; of bunches the pack that is called so is one.
 *
 * @returns Null where there are none, or where the shop weighs off any number.
 */
export function piecePacks(sold: Sold, unit: string): PiecePacks | null {
  const byUnit = known.get(sold) ?? new Map<string, PiecePacks | null>();
  known.set(sold, byUnit);
  let found = byUnit.get(unit);
  if (found === undefined) {
    const counts = ({ unit: label, size, word }: Pack): boolean =>
      label === 'count' && (word === unit || (unit === 'count' && size.greaterThan(1)));
    const packs = sold.loose ? [] : sold.packs.filter(counts);
    const byPieces = { ...sold, packs: packs.map((pack) => ({ ...pack, grams: pack.size })) };
    found = packs.length === 0 ? null : { packs, byPieces };
    byUnit.set(unit, found);
  }
  return found;
}

function piecesOf({ packs, byPieces }: PiecePacks, count: Exact, kitchen: Kitchen): Bought | null {
  const bought = count.isZero() ? null : buy(count, byPieces, ...stepsOf(kitchen));
  if (bought === null) return null;
  const own = bought.packs.flatMap(({ count: times, pack }) => {
    const same = packs[byPieces.packs.indexOf(pack)];
    return same === undefined ? [] : [{ count: times, pack: same }];
  });
  const sum = (each: (pack: Pack) => Exact): Exact => sumOf(own, ({ count: times, pack }) => each(pack).times(times));
  const left = bought.leftoverGrams.dividedBy(sum(({ size }) => size));
  return { packs: own, looseGrams: null, leftoverGrams: left.times(sum(({ grams }) => grams)) };
}

/** What the kitchen's counter weighs off, in grams. */
function stepsOf(kitchen: Kitchen): Exact[] {
  return counterSteps(kitchen).map(({ grams }) => grams);
}
