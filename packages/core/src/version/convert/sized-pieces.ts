import type { LineReading } from '../../amount/reading.js';
import { isMassUnit } from '../../amount/size.js';
import type { Stated } from '../../amount/stated.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { weightSaid } from '../../kitchen/measure/weight-said.js';
import { soldIn } from '../../kitchen/shop/buy.js';

/**
 * Whether pieces of a weight each are counted (`4 salmon fillets (about 140 g each)`, `1 (4-lb) chicken`): the number is kept and the
 * weight told. What the shops sell in packs is packs.
 */
export function isSizedPieces(
  { pack }: Pick<Stated, 'pack'> | LineReading,
  food: Food | null,
  kitchen: Kitchen,
): boolean {
  if (pack === null || pack.word !== '' || !isMassUnit(pack.unit)) return false;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  return sold === null || (sold.sold && sold.packs.length === 0);
}

/** The weight of each piece, as it is told in a kitchen. */
export function pieceSizeIn(stated: Stated, kitchen: Kitchen): Stated['pack'] {
  const { pack } = stated;
  if (pack === null || !isMassUnit(pack.unit)) return pack;
  const { low, high, unit } = weightSaid(pack.size, pack.sizeHigh ?? null, pack.unit, kitchen);
  return { size: low, sizeHigh: high, unit, word: '' };
}
