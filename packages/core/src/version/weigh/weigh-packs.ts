import { isMassUnit, isVolumeUnit } from '../../amount/size.js';
import type { Stated } from '../../amount/stated.js';
import { Exact, middleOf } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import { fromGrams, pieceKey, timesWeighed, type Weighed, weigh } from '../../food/weigh.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { isCan, packMeant } from '../../kitchen/shop/unsized-pack.js';
import { samePack } from '../convert/whole-packs.js';
import { scales, type WeighedAmount, type Weighing } from './weighing.js';

/** What packs of a size weigh, as the shops of their kitchen fill them; null for an amount that counts none. */
export function weighPacks(stated: Stated, weighing: Weighing): WeighedAmount | null {
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

/** `1 can butter beans`: the size that a cook there takes. What the author says that one weighs goes before. */
export function unsizedPack(
  unit: 'can' | 'tin' | 'packet' | 'count',
  { food, kitchen, container, ownWeights }: Weighing,
): Pack | null {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (food === null || sold === null || ownWeights.perPiece.has(pieceKey(food.id, unit))) return null;
  return packMeant(sold, container ?? { word: unit, size: null });
}

/** What a number, or a range of numbers, of a shop's packs weighs. */
export function counted(low: Exact, high: Exact | null, pack: Pack, weighing: Weighing): WeighedAmount {
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
