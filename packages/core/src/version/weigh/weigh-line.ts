import { type UnsizedContainer, unsizedContainer } from '../../amount/container.js';
import { fillFactor } from '../../amount/fill.js';
import type { LineReading } from '../../amount/reading.js';
import { dimensionOf, isMassUnit, isVolumeUnit } from '../../amount/size.js';
import { type Stated, statedIn, type Term } from '../../amount/stated.js';
import type { Dimension } from '../../amount/unit.js';
import { Exact, middleOf } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import {
  addWeighed,
  fromGrams,
  pieceKey,
  type StatedWeights,
  shareByWeight,
  timesWeighed,
  unweighed,
  type Weighed,
  weigh,
} from '../../food/weigh.js';
import { eggSizeNamed, partOfEgg, sameEggs } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { gramsByWrapper } from '../../kitchen/measure/wrapper.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { isCan, packMeant } from '../../kitchen/shop/unsized-pack.js';
import { samePack } from '../convert/whole-packs.js';

/** Both ends of what an amount weighs. */
export interface WeighedAmount {
  low: Weighed;
  high: Weighed | null;
  dimension: Dimension;
  /** Drained grams, where the line says drained and its pack has a sourced figure. */
  drainedGrams: Exact | null;
  /** The shop's pack, where packs are counted. */
  pack: Pack | null;
  /** How many packs or pieces. */
  count: Exact | null;
}

/** Everything needed to weigh an amount in the kitchen where it stands. */
export interface Weighing {
  food: Food | null;
  kitchen: Kitchen;
  prep: string;
  sizeWord: string;
  /** The container of a line that counts some and does not say what they hold. */
  container: UnsizedContainer | null;
  ownWeights: StatedWeights;
}

/** The preparation in which a food is measured: `1 cup sifted flour` is sifted first, `1 cup flour, sifted` afterwards. */
function measuredAs({ text, prep, food }: LineReading): string {
  if (!/\bsifted\b/i.test(prep) || food === null) return prep;
  return /\bsifted\b/i.test(text.slice(0, food.span.end)) ? prep : prep.replace(/\bsifted\b/i, '');
}

/** How an ingredient line is weighed. */
export function weighingOf(
  reading: LineReading,
  food: Food | null,
  kitchen: Kitchen,
  ownWeights: StatedWeights,
): Weighing {
  return {
    food,
    kitchen,
    prep: measuredAs(reading),
    sizeWord: reading.size?.text ?? '',
    container: unsizedContainer(reading),
    ownWeights,
  };
}

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
 * What another kitchen needs of the native line. Of a can that is drained only what is drained is needed, where its shops sell the food in
 * no packs that are used whole: what is in a vacuum pack has no liquid.
 *
 * @param weighing In the kitchen where the line was written.
 */
export function weighNeed(reading: LineReading, weighing: Weighing, kitchen: Kitchen): WeighedAmount | null {
  const weighed = weighReading(reading, weighing);
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

function weighTerm(value: Exact, unit: Parameters<typeof weigh>[1], stated: Stated, weighing: Weighing): Weighed {
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

function scales({ kitchen, prep, ownWeights }: Weighing): Parameters<typeof weigh>[3] {
  return { units: kitchen.units, prep, stated: ownWeights };
}

function weighPacks(stated: Stated, weighing: Weighing): WeighedAmount | null {
  const count = stated.statements[0]?.[0];
  const { pack } = stated;
  if (count === undefined || pack === null) return null;
  const { food, kitchen } = weighing;
  const label = labelGrams(pack, weighing);
  const listed = food === null || label.grams === null ? null : samePack(label.grams, soldIn(food, kitchen.id));
  const each = label.grams === null ? label : fromGrams(label.grams, food, scales(weighing));
  const dimension = isMassUnit(pack.unit) ? 'mass' : isVolumeUnit(pack.unit) ? 'volume' : 'count';
  return {
    low: timesWeighed(each, count.low),
    high: count.high === null ? null : timesWeighed(each, count.high),
    dimension,
    drainedGrams: drained(count.low, listed, weighing),
    pack: listed,
    count: count.low,
  };
}

/** A label in volume carries its grams: the shop's own figure for that size, else by density. */
function labelGrams(pack: NonNullable<Stated['pack']>, weighing: Weighing): Weighed {
  const { food, kitchen } = weighing;
  const listed =
    food === null ? undefined : soldIn(food, kitchen.id)?.packs.find((each) => isLabelled(each, pack, food));
  if (listed !== undefined) return { grams: listed.grams, millilitres: null };
  // `4 (6 to 8-oz) fillets` count by the middle of both.
  const measured = weigh(middleOf(pack.size, pack.sizeHigh ?? null), pack.unit, food, scales(weighing));
  return { ...measured, grams: spoonedOut(pack, measured.grams, weighing)?.grams ?? measured.grams };
}

type MeasuredPack = NonNullable<Stated['pack']>;

/**
 * The shop's pack that is meant where a packet's spoons or a can's cups are told instead of its label: `1 packet (2¼ tsp)` of yeast is the
 * usual one, which weighs what its label says, and `1 can (1½ cups)` of beans holds as much without its water.
 */
function spoonedOut({ unit, word }: MeasuredPack, grams: Exact | null, { food, kitchen }: Weighing): Pack | null {
  const isDrained = unit === 'cup' && isCan(word);
  if (!(spoons.has(unit) || isDrained) || grams === null || food === null) return null;
  const off = (size: Exact): Exact => size.dividedBy(grams).ln().abs();
  const far = (pack: Pack): Exact =>
    isDrained && pack.drainedGrams !== null ? Exact.min(off(pack.grams), off(pack.drainedGrams)) : off(pack.grams);
  const near = (soldIn(food, kitchen.id)?.packs ?? []).filter((pack) => far(pack).lessThanOrEqualTo(spoonedLimit));
  return near.sort((a, b) => far(a).comparedTo(far(b)))[0] ?? null;
}

const spoons: ReadonlySet<string> = new Set(['tsp', 'tbsp']);
/** A spoon of a powder differs so much from cook to cook, as a logarithm. Common practice, no source. */
const spoonedLimit = '0.3';

/** Whether a shop's pack is the one that is written. The ounces on a carton of something that pours are fluid ones. */
export function isLabelled(pack: Pack, written: { size: Exact; unit: string }, food: Food): boolean {
  if (!pack.size.equals(written.size)) return false;
  return pack.unit === written.unit || (food.pours && pack.unit === 'floz' && written.unit === 'oz');
}

function drained(count: Exact, pack: Pack | null, { prep }: Weighing): Exact | null {
  return pack?.drainedGrams != null && /\bdrained\b/i.test(prep) ? pack.drainedGrams.times(count) : null;
}

/** Whether a unit counts containers of the shop. */
export function isContainer(unit: string): unit is 'can' | 'tin' | 'packet' {
  return unit === 'can' || unit === 'tin' || unit === 'packet';
}

/** Whether a kitchen's shops sell a food in the pieces that a line counts: their block is not the author's. */
export function isShopPiece(reading: LineReading, food: Food | null, kitchen: Kitchen): boolean {
  const container = unsizedContainer(reading);
  const sold = food === null || container?.isPiece !== true ? null : soldIn(food, kitchen.id);
  return sold?.packs.some(({ word }) => word === container?.word) ?? false;
}

/** `1 can butter beans`: the size that a cook there takes. What the author says that one weighs goes before. */
function unsizedPack(
  unit: 'can' | 'tin' | 'packet' | 'count',
  { food, kitchen, container, ownWeights }: Weighing,
): Pack | null {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (food === null || sold === null || ownWeights.perPiece.has(pieceKey(food.id, unit))) return null;
  return packMeant(sold, container ?? { word: unit, size: null });
}

function counted(low: Exact, high: Exact | null, pack: Pack, weighing: Weighing): WeighedAmount {
  const of = (count: Exact): Weighed => fromGrams(pack.grams.times(count), weighing.food, scales(weighing));
  return {
    low: of(low),
    high: high === null ? null : of(high),
    dimension: weighing.food?.pours ? 'volume' : 'mass',
    drainedGrams: drained(low, pack, weighing),
    pack,
    count: low,
  };
}
