import { unsizedContainer } from '../../amount/container.js';
import { fillFactor } from '../../amount/fill.js';
import type { LineReading } from '../../amount/reading.js';
import { dimensionOf } from '../../amount/size.js';
import { type Stated, statedIn, type Term } from '../../amount/stated.js';
import type { UnitId } from '../../amount/unit.js';
import { isContainer } from '../../amount/unit-kind.js';
import type { Exact } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import { addWeighed, fromGrams, shareByWeight, unweighed, type Weighed, weigh } from '../../food/weigh.js';
import { eggSizeNamed, partOfEgg, sameEggs } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { gramsByWrapper } from '../../kitchen/measure/wrapper.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { samePack } from '../convert/whole-packs.js';
import { inOwnUnits } from './own-units.js';
import { counted, unsizedPack, weighPacks } from './weigh-packs.js';
import { scales, type WeighedAmount, type Weighing } from './weighing.js';

/** What an amount weighs where it stands; null for a line with no amount. */
export function weighStated(stated: Stated | null, weighing: Weighing): WeighedAmount | null {
  const terms = stated?.statements[0];
  const first = terms?.[0];
  if (stated === null || terms === undefined || first === undefined) return null;
  const { plus, ...own } = stated;
  if (plus !== undefined) return together(weighStated(own, weighing), weighStated(plus, weighing));
  if (stated.pack !== null) return weighPacks(stated, weighing);
  const unit = first.unit;
  const isPiece = unit === 'count' && weighing.container?.isPiece === true;
  const usual = isContainer(unit) || isPiece ? unsizedPack(unit, weighing) : null;
  if (usual !== null && usual.unit === 'count' && partOfEgg(weighing.food) !== null)
    return weighStated({ ...stated, statements: [[piecesIn(first, usual)]] }, weighing);
  if (usual !== null) return counted(first.low, first.high, usual, weighing);
  const each = (value: Exact, { unit: of, fill }: Term): Weighed =>
    weighTerm(value.times(fillFactor(fill, of)), of, stated, weighing);
  const low = terms.map((term) => each(term.low, term)).reduce(addWeighed);
  const ranged = terms.some((term) => term.high !== null);
  const high = ranged ? terms.map((term) => each(term.high ?? term.low, term)).reduce(addWeighed) : null;
  const count = dimensionOf(unit) === 'count' ? first.low : null;
  return { low, high, dimension: dimensionOf(unit), drainedGrams: null, pack: null, count };
}

/** An amount and what is added to it: so much is no number of packs. */
function together(one: WeighedAmount | null, other: WeighedAmount | null): WeighedAmount | null {
  if (one === null || other === null) return null;
  const isRange = one.high !== null || other.high !== null;
  const high = isRange ? addWeighed(one.high ?? one.low, other.high ?? other.low) : null;
  return { ...one, low: addWeighed(one.low, other.low), high, drainedGrams: null, pack: null, count: null };
}

/** What the native line weighs. */
export function weighReading(reading: LineReading, weighing: Weighing): WeighedAmount | null {
  return weighStated(statedIn(reading), weighing);
}

/**
 * What another kitchen needs of the native line, by the author's own statement in its units where there is one. Of a can that is drained only what is drained is needed, where its shops sell the food in
 * no packs that are used whole: what is in a vacuum pack has no liquid.
 *
 * @param weighing In the kitchen where the line was written.
 */
export function weighNeed(reading: LineReading, weighing: Weighing, kitchen: Kitchen): WeighedAmount | null {
  const weighed = weighReading(inOwnUnits(reading, weighing.kitchen, kitchen), weighing);
  const { food } = weighing;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (weighed === null || sold === null || !sold.sold || isUseWhole(sold)) return weighed;
  const { low, high, drainedGrams, count } = weighed;
  if (drainedGrams === null || low.grams === null || count === null || count.isZero()) return weighed;
  if (samePack(low.grams.dividedBy(count), sold) !== null) return weighed;
  const share = drainedGrams.dividedBy(low.grams);
  const drainedOf = (end: Weighed): Weighed => shareByWeight(end, share, food, scales(weighing));
  return {
    ...weighed,
    low: drainedOf(low),
    high: high === null ? null : drainedOf(high),
    drainedGrams: null,
    pack: null,
    count: null,
  };
}

/** A carton of eggs is a dozen eggs of the kitchen's size, not so many grams. */
function piecesIn({ low, high }: Term, { size }: Pack): Term {
  return { low: low.times(size), high: high?.times(size) ?? null, unit: 'count' };
}

function weighTerm(value: Exact, unit: UnitId, stated: Stated, weighing: Weighing): Weighed {
  const { food, kitchen } = weighing;
  if (partOfEgg(food) !== null && unit === 'count') {
    const grams = eggGrams(stated, weighing);
    return grams === null ? unweighed : fromGrams(value.times(grams), food, scales(weighing));
  }
  const marked = food === null ? null : gramsByWrapper(value, unit, food, kitchen);
  if (marked !== null) return fromGrams(marked, food, scales(weighing));
  const pieceSize = `${weighing.sizeWord} ${weighing.prep}`;
  return weigh(value, unit, food, {
    ...scales(weighing),
    prep: dimensionOf(unit) === 'count' ? pieceSize : weighing.prep,
  });
}

/** One egg, its white or its yolk: as the author weighed it, or as the kitchen's class says. */
function eggGrams({ eggSize }: Stated, { food, kitchen, sizeWord, ownWeights }: Weighing): Exact | null {
  const own = ownWeights.eggs.get(food?.id ?? '');
  const size = eggSizeNamed(kitchen, eggSize ?? sizeWord);
  if (own !== undefined && own.size === size?.name && sameEggs(own.kitchen, kitchen)) return own.grams;
  return size?.edibleGrams.times(partOfEgg(food) ?? 1) ?? null;
}

/** Whether a kitchen's shops sell a food in the pieces that a line counts: their block is not the author's. */
export function isShopPiece(reading: LineReading, food: Food | null, kitchen: Kitchen): boolean {
  const container = unsizedContainer(reading);
  const sold = food === null || container?.isPiece !== true ? null : soldIn(food, kitchen.id);
  return sold?.packs.some(({ word }) => word === container?.word) ?? false;
}
