import type { Pack, Sold } from '../../food/food.js';
import { areOtherThanUsual } from '../../kitchen/shop/unsized-pack.js';
import type { Weights } from '../weights.js';

/** What packs of another size than the usual one of their container cost. */
export function otherPackCost(pack: Pack, count: number, sold: Sold, { otherPack }: Weights): number {
  return areOtherThanUsual(pack, count, sold) ? otherPack : 0;
}
