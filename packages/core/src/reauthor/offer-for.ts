import { isLengthUnit } from '../amount/size.js';
import type { Stated, Term } from '../amount/stated.js';
import { statedIn } from '../amount/stated.js';
import { Exact } from '../exact.js';
import type { Sold } from '../food/food.js';
import { pieceGrams } from '../food/weigh.js';
import { isUseWhole, soldIn } from '../kitchen/buy.js';
import { partOfEgg } from '../kitchen/egg.js';
import { areOtherThanUsual } from '../kitchen/unsized-pack.js';
import { byLength } from '../version/convert-amount.js';
import { isSizedPieces, pieceSizeIn } from '../version/sized-pieces.js';
import { isContainer } from '../version/weigh-line.js';
import { isHalved } from '../version/whole-packs.js';
import type { Demand, Offer } from './demand.js';
import { isCounted } from './demands-of.js';
import { costOfLeft, leftoverOfPieces } from './leftover-cost.js';
import { measuredOffer } from './measured-offer.js';
import { widthCost } from './measured-pairs.js';
import { type OfferContext, OfferList, reach } from './offer-list.js';
import type { Weights } from './weights.js';

/** Everything that a kitchen's tools and shops offer for a demand, at any batch factor that is considered. */
export function offerFor(demand: Demand, context: OfferContext): Offer {
  const { kitchen } = context;
  const { food } = demand;
  if (food?.role === 'cure') return asWritten(demand);
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (partOfEgg(food) !== null && isCounted(demand)) return eggs(demand, context);
  if (demand.base === 'g' && sold !== null && isUseWhole(sold)) return packs(demand, sold, context);
  // A pinch of what stands in is a pinch.
  if (isStandIn(demand) && isCounted(demand) && demand.base !== 'count') return standInPieces(demand, sold, context);
  if (isCounted(demand) && !isWeighedPiece(demand)) return pieces(demand, sold, context);
  if (isLength(demand)) return asLong(demand, context);
  if (!isStandIn(demand) && isSizedPieces(demand.reading, food, kitchen)) return pieces(demand, sold, context);
  return measuredOffer(demand, sold, context);
}

/** Whole packs of a food that is not used whole: what an author who makes it the anchor asks for. */
export function packOffer(demand: Demand, context: OfferContext): Offer | null {
  const sold = demand.food === null || demand.base !== 'g' ? null : soldIn(demand.food, context.kitchen.id);
  return sold === null || sold.packs.length === 0 ? null : packs(demand, sold, context);
}

/** A cure is as it was written. */
function asWritten(demand: Demand): Offer {
  const stated = statedIn(demand.reading);
  if (stated === null) throw new RangeError('A demand without an amount.');
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}

/** A length of it, or pieces of a length each. */
function isLength({ reading, base }: Demand): boolean {
  const unit = reading.pack?.unit ?? reading.amounts[0]?.unit;
  return base === 'count' && unit !== undefined && isLengthUnit(unit);
}

/** Three inches of ginger are a gesture: no batch lengthens them by a tenth. */
function asLong(demand: Demand, { kitchen }: OfferContext): Offer {
  const written = statedIn(demand.reading);
  const stated = written === null ? null : byLength(written, kitchen);
  if (stated === null) throw new RangeError('A length without an amount.');
  demand.weight = 0;
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}

/** A stick of butter, a can of something that is not used whole. */
function isWeighedPiece({ reading, food, base }: Demand): boolean {
  const unit = reading.amounts[0]?.unit;
  if (base !== 'g') return false;
  return (unit === 'stick' && food?.role === 'fat') || (unit !== undefined && isContainer(unit));
}

interface Counted {
  stated: Stated;
  fixed: number;
}

/** A count in words; of a range one as wide as the author's in whole steps, or, less readily, one number. */
function countedOr(demand: Demand, count: number, unit: Term['unit'], step: number, weights: Weights): Counted[] {
  const approx = statedIn(demand.reading)?.approx ?? false;
  const state = (high: number | null): Stated => ({
    statements: [[{ low: new Exact(count), high: high === null ? null : new Exact(high), unit }]],
    pack: null,
    eggSize: null,
    approx,
  });
  const single = { stated: state(null), fixed: widthCost(1, demand, weights) };
  const upper = Math.max(Math.round((count * demand.spread) / step) * step, demand.spread > 1 ? count + step : 0);
  return upper > count
    ? [{ stated: state(upper), fixed: widthCost(upper / count, demand, weights) }, single]
    : [single];
}

function upperEnd({ statements }: Stated): number {
  const term = statements[0]?.[0];
  return term === undefined ? 0 : (term.high ?? term.low).toNumber();
}

/** The geometric mean of a count and its upper end. */
function meanOf(stated: Stated): number {
  const term = stated.statements[0]?.[0];
  if (term === undefined) return 0;
  const low = term.low.toNumber();
  return term.high === null ? low : Math.sqrt(low * term.high.toNumber());
}

/** Counts from the least to the most that is in reach, in steps. */
function countsWithin(each: number, step: number, { least, most }: { least: number; most: number }): number[] {
  const counts: number[] = [];
  // One step under the reach: a range from there has its middle within it.
  const first = Math.max(step, (Math.ceil(least / each / step) - 1) * step);
  for (let count = first; count * each <= most; count += step) counts.push(count);
  return counts;
}

function eggs(demand: Demand, context: OfferContext): Offer {
  if (demand.loose) return looseEggs(demand, context);
  const { kitchen, weights, eggs: sizes } = context;
  const list = new OfferList();
  const within = reach(demand, context);
  const wholes: number[] = [];
  for (const size of sizes) {
    const grams = size.edibleGrams.times(partOfEgg(demand.food) ?? 1).toNumber();
    const usual = size.name === kitchen.eggs.usual;
    // Where all eggs of a recipe are of one size, that costs the recipe once.
    const extra = usual || sizes.length === 1 ? 0 : size.seldom ? weights.seldomEgg : weights.otherEgg;
    wholes.push(grams);
    for (const count of countsWithin(grams, 1, within)) {
      for (const { stated, fixed } of countedOr(demand, count, 'count', 1, weights)) {
        const named = { ...stated, eggSize: usual ? null : size.name };
        list.add(demand, meanOf(named) * grams, fixed + extra, () => named);
      }
    }
  }
  return list.offer(wholes, 0);
}

/** As many as the author counts, of the size that the others are, where one is named at all. */
function looseEggs(demand: Demand, { kitchen, eggs: [size, ...others] }: OfferContext): Offer {
  const written = statedIn(demand.reading);
  if (written === null) throw new RangeError('A demand without an amount.');
  const named = demand.reading.size !== null && others.length === 0 && size?.name !== kitchen.eggs.usual;
  const eggSize = named ? (size?.name ?? null) : null;
  const stated = { ...written, statements: written.statements.slice(0, 1), eggSize };
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}

function packs(demand: Demand, sold: Sold, context: OfferContext): Offer {
  const list = new OfferList();
  // Largest first, and whole ones before halves: of the same contents the fewest packs are bought.
  const shelf = [...sold.packs].reverse();
  const offered = [
    ...shelf.map((pack) => ({ pack, step: 1 })),
    ...shelf.filter((pack) => demand.food !== null && isHalved(demand.food, pack)).map((pack) => ({ pack, step: 0.5 })),
  ];
  for (const { pack, step } of offered) {
    const each = packSize(demand, pack);
    const label = { size: pack.size, unit: pack.unit as Term['unit'], word: pack.word };
    const most = pack === shelf[0] ? Number.POSITIVE_INFINITY : mostSmall;
    for (const count of countsWithin(each, step, reach(demand, context))) {
      const extra = areOtherThanUsual(pack, count, sold) ? context.weights.otherPack : 0;
      const left = leftOfPacks(count, demand, context.weights);
      for (const { stated, fixed } of countedOr(demand, count, 'count', step, context.weights))
        if (upperEnd(stated) <= most)
          list.add(demand, meanOf(stated) * each, fixed + extra + left, () => ({ ...stated, pack: label }));
    }
  }
  return list.offer(
    offered.map(({ pack, step }) => packSize(demand, pack) * step),
    0,
  );
}

/** Nobody opens more small cans than this where a larger one is sold. Common practice, no source. */
const mostSmall = 3;

function leftOfPacks(count: number, { food }: Demand, weights: Weights): number {
  const bought = Math.ceil(count);
  return food === null ? 0 : costOfLeft({ bought, left: bought - count }, food.keeps, weights);
}

/**
 * What a pack is worth to a demand: drained against drained where both are known, else net against net. What is measured out of no pack
 * (a cup of chickpeas) is drained already.
 */
function packSize(demand: Demand, pack: Sold['packs'][number]): number {
  const { weighed, quantity, food, lines, reading } = demand;
  if (pack.drainedGrams === null || lines.some((line) => line.food !== food)) return pack.grams.toNumber();
  if (reading.pack === null && !isCounted(demand)) return pack.drainedGrams.toNumber();
  const native = weighed.drainedGrams;
  return native === null ? pack.grams.toNumber() : pack.drainedGrams.dividedBy(native).toNumber() * quantity;
}

/** Another food than the author's: its pieces weigh otherwise, and three large crackers stand for eight small ones. */
function isStandIn({ lines, food }: Demand): boolean {
  return lines.every((line) => line.food !== food);
}

function standInPieces(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const { food } = demand;
  // A lime is a piece, its juice is not.
  const each = food === null || food.pours || demand.base !== 'g' ? null : pieceGrams(food, 'count', '')?.toNumber();
  if (each == null || each <= 0) return measuredOffer(demand, sold, context);
  const step = demand.quantity <= 2.5 * each ? 0.5 : 1;
  const list = new OfferList();
  for (const count of countsWithin(each, step, reach(demand, context))) {
    for (const { stated, fixed } of countedOr(demand, count, 'count', step, context.weights))
      list.add(demand, meanOf(stated) * each, fixed, () => stated);
  }
  return list.hasNear(demand.quantity) ? list.offer([], step * each) : measuredOffer(demand, sold, context);
}

/** Units of which a cook takes a half. */
const halved: ReadonlySet<string> = new Set(['count', 'bunch', 'head']);

/** Whole pieces, and halves of what an author halves or has two of at most. */
function pieces(demand: Demand, sold: Sold | null, context: OfferContext): Offer {
  const written = statedIn(demand.reading);
  const term = written?.statements[0]?.[0];
  const list = new OfferList();
  if (written === null || term === undefined || term.low.isZero()) return list.offer([], 0);
  const native = meanOf(written);
  const { kitchen } = context;
  const pack = isSizedPieces(written, demand.food, kitchen) ? pieceSizeIn(written, kitchen) : written.pack;
  const each = demand.quantity / native;
  const step = halved.has(term.unit) && (native <= 2 || !term.low.isInteger()) ? 0.5 : 1;
  // The author's own count comes first: it keeps its words, and its quarters.
  const leftOf = (count: number, size: number): number =>
    leftoverOfPieces(count, term.unit, size, demand, sold, context.weights);
  const own = leftOf(native, demand.quantity);
  list.add(demand, demand.quantity, own, () => ({ ...written, pack, statements: written.statements.slice(0, 1) }));
  for (const count of countsWithin(each, step, reach(demand, context))) {
    for (const { stated, fixed } of countedOr(demand, count, term.unit, step, context.weights)) {
      const left = leftOf(meanOf(stated), meanOf(stated) * each);
      list.add(demand, meanOf(stated) * each, fixed + left, () => ({ ...stated, pack }));
    }
  }
  return list.offer([], demand.base === 'g' ? step * each : 0);
}
