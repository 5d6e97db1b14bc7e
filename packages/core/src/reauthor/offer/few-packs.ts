import { type Stated, statePacks } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import type { Pack } from '../../food/food.js';

/** A number of packs of one size. */
interface FewPacks {
  pack: Pack;
  count: number;
  grams: number;
  state: () => Stated;
}

/**
 * Up to so many packs of each size of a shelf that come to what is in reach, in its order; pieces are not counted out by the pack.
 *
 * @param reach In grams.
 */
export function fewPacks(
  shelf: readonly Pack[],
  mostCount: number,
  reach: { least: number; most: number },
): FewPacks[] {
  return shelf
    .filter(({ unit }) => unit !== 'count')
    .flatMap((pack) => {
      const each = pack.grams.toNumber();
      const found: FewPacks[] = [];
      for (let count = 1; count <= mostCount && count * each <= reach.most; count++) {
        if (count * each < reach.least) continue;
        const state = (): Stated => statePacks({ low: new Exact(count), high: null, unit: 'count' }, pack);
        found.push({ pack, count, grams: count * each, state });
      }
      return found;
    });
}
