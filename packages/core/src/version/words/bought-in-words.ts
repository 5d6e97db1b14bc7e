import { gramsIn } from '../../amount/size.js';
import { plural, writeLabel, writeTerm } from '../../amount/write.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Bought } from '../../kitchen/shop/buy.js';

/** What to buy, a phrase for each size: `2 × 400 g tins`, `1 bunch`, `1½ lb`. */
export function boughtInWords({ packs, looseGrams }: Bought, { counter }: Kitchen): string[] {
  if (looseGrams !== null) {
    const isPounds = counter.unit === 'lb';
    const low = isPounds ? looseGrams.dividedBy(gramsIn('lb')).toDecimalPlaces(4) : looseGrams;
    return [writeTerm({ low, high: null, unit: isPounds ? 'lb' : 'g' })];
  }
  return packs.map(({ count, pack: { size, unit, word } }) => {
    const words = count === 1 ? word : plural(word);
    // A bunch is a piece, not a size.
    if (unit === 'count' && size.equals(1)) return `${count} ${words}`;
    return `${count} × ${writeLabel({ size, unit })} ${words}`.trim();
  });
}
