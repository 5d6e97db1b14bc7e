import { dimensionOf } from '../../amount/size.js';
import { writeStated } from '../../amount/write.js';
import { Exact, ratioOf, toStep } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import type { VersionFood } from '../version.js';
import { theRest } from './measure-shares.js';
import { type Share, usesAllOf } from './share-of-line.js';

/** Pieces, and packs that are used whole; of others halves, but of a carton of cream what a jug measures. */
export function isCounted({ stated, food }: VersionFood, shares: readonly Share[], kitchen: Kitchen): boolean {
  const counted = stated?.statements[0]?.[0];
  if (stated === null || counted === undefined) return false;
  if (stated.pack === null || food === null) return stated.pack !== null || dimensionOf(counted.unit) === 'count';
  if (isUseWhole(soldIn(food, kitchen.id))) return shares.every((share) => isNearCount(share, counted.low));
  return !food.pours && shares.every(({ fraction }) => fraction.times(counted.low).times(2).isInteger());
}

/** A measured share of whole packs that is nearer to no number of them stays measured: a cup of tomatoes is not the tin. */
const nearCount = new Exact('0.1');

function isNearCount(share: Share, packs: Exact): boolean {
  const { reading } = share.mention;
  const unit = reading.amounts[0]?.unit;
  if (unit === undefined || reading.pack !== null || dimensionOf(unit) === 'count') return true;
  const wanted = packs.times(share.fraction);
  return toStep(wanted, stepOf(share)).minus(wanted).abs().lessThanOrEqualTo(wanted.times(nearCount));
}

/** Parts of a number of pieces or packs: 2 of 4 onions. The last takes what the others leave, as a number where there is one. */
export function countShares(shares: readonly Share[], own: VersionFood, kitchen: Kitchen): (string | null)[] {
  const { stated } = own;
  const term = stated?.statements[0]?.[0];
  if (stated === null || term === undefined) return [];
  const usesAll = usesAllOf(shares);
  const whole = term.low.times(ratioOf(own.portion.grams, own.chosen.grams) ?? 1);
  let left = whole;
  return shares.map((share, index) => {
    const { fraction } = share;
    const isLast = usesAll && index === shares.length - 1;
    if (isLast && (term.high !== null || !left.isPositive() || left.isZero())) return theRest;
    const step = stepOf(share);
    const count = isLast && whole.equals(term.low) ? left : toStep(isLast ? left : whole.times(fraction), step);
    if (count.isZero()) return null;
    left = left.minus(count);
    return writeStated({ ...stated, statements: [[{ ...term, low: count, high: null }]], approx: false }, kitchen);
  });
}

/** Half an onion is cut; nobody takes half of an egg where the author took whole ones. */
function stepOf({ mention }: Share): Exact {
  return new Exact(mention.reading.amounts[0]?.low.isInteger() ? 1 : '0.5');
}
