import { builtInLarder, extendLarder, type Larder, type LarderData } from '@retare/larder';

/** Extended larders by their data, so that a site's posts share one. */
const extended = new WeakMap<LarderData, Larder>();

/** The built-in larder with a site's own data over it. */
export function larderOf(data: LarderData | undefined): Larder {
  if (data === undefined) return builtInLarder();
  const larder = extended.get(data) ?? extendLarder(builtInLarder(), data);
  extended.set(data, larder);
  return larder;
}
