import { isMassUnit } from '../../amount/size.js';
import { writeStated } from '../../amount/write.js';
import { Exact } from '../../exact.js';
import { timesWeighed, type Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { land, stateMeasure } from '../convert/land.js';
import type { VersionFood } from '../version.js';
import { type Share, usesAllOf } from './share-of-line.js';

/** What the last share reads where no measure fits what is left. */
export const theRest = 'the rest';

/** Shares that are weighed or measured; null where no tool of the kitchen holds one. */
export function measureShares(shares: readonly Share[], own: VersionFood, kitchen: Kitchen): (string | null)[] {
  const usesAll = usesAllOf(shares);
  let left: Weighed = own.portion;
  return shares.map(({ fraction }, index) => {
    if (usesAll && index === shares.length - 1) return lastShare(left, own, kitchen);
    const landed = landShare(own.portion, fraction, own, kitchen);
    if (landed === null) return null;
    left = minus(left, landed.size, landed.base, own.portion);
    return landed.text;
  });
}

interface LandedShare {
  text: string;
  size: Exact;
  base: 'g' | 'ml';
}

function landShare(whole: Weighed, fraction: Exact, version: VersionFood, kitchen: Kitchen): LandedShare | null {
  const unit = version.stated?.statements[0]?.[0]?.unit;
  const weighed = timesWeighed(whole, fraction);
  // Of a pack, and of what another line's amount holds, only the food says how it is measured.
  const isPacked = version.stated?.pack != null || version.stated === null;
  const mass = isPacked ? version.food?.pours === false : unit !== undefined && isMassUnit(unit);
  const landed = land({ weighed, dimension: mass ? 'mass' : 'volume', food: version.food, byWrapper: mass }, kitchen);
  if (landed === null) return null;
  const { size, base } = landed.measure;
  return { text: writeStated(stateMeasure(landed.measure, false), kitchen), size, base };
}

/** What the others leave, if a tool measures it, else in words. */
function lastShare(left: Weighed, version: VersionFood, kitchen: Kitchen): string {
  const landed = landShare(left, new Exact(1), version, kitchen);
  if (landed === null) return theRest;
  const size = landed.base === 'g' ? left.grams : left.millilitres;
  const exact = size?.minus(landed.size).abs().lessThanOrEqualTo(size.times('0.005')) ?? false;
  // The rest of an amount that serves other lines too would be theirs.
  return exact || version.portion !== version.chosen ? landed.text : theRest;
}

function minus(left: Weighed, size: Exact, base: 'g' | 'ml', whole: Weighed): Weighed {
  const own = base === 'g' ? whole.grams : whole.millilitres;
  if (own === null || own.isZero()) return left;
  const part = size.dividedBy(own);
  return {
    grams: left.grams === null || whole.grams === null ? null : left.grams.minus(whole.grams.times(part)),
    millilitres:
      left.millilitres === null || whole.millilitres === null
        ? null
        : left.millilitres.minus(whole.millilitres.times(part)),
  };
}
