import type { UnsizedContainer } from '../../amount/container.js';
import type { Pack, Sold } from '../../food/food.js';
import { equalPacks } from './equal-packs.js';

/** Container words for the same thing. Common practice, no source. */
const alike: readonly (readonly string[])[] = [
  ['can', 'tin', 'canister'],
  ['packet', 'pack', 'package'],
  ['sachet', 'envelope'],
  ['carton', 'box'],
  ['tub', 'pot', 'container'],
];

/** Whether two container words name the same thing: a can is a tin. */
export function sameContainer(one: string, other: string): boolean {
  return one === other || alike.some((words) => words.includes(one) && words.includes(other));
}

/** Whether a container is of tinplate. No other container is ever called so. */
export function isCan(container: string): boolean {
  return sameContainer(container, 'can');
}

/**
 * The pack that a container word without a size means (`1 can evaporated milk`): the only one in such a container, or the usual one of
 * several, or the least or largest where the line says `small` or `large`. Other words than that for a can are also said of whatever
 * container a food comes in.
 *
 * @returns Null where no such pack is sold, or where it may be any of several.
 */
export function packMeant(sold: Sold, { word: container, size, isPiece }: UnsizedContainer): Pack | null {
  const same = sold.packs.filter(({ word }) => sameContainer(word, container));
  if (same.length > 0) return oneOf(same, size);
  if (isCan(container) || isPiece) return null;
  return oneOf(isOfPaper(container) ? sold.packs.filter(({ word }) => !isRigid(word)) : sold.packs, size);
}

/** Nobody calls a can, a tub or a jar a packet, though a pack or a box of it may well be one. */
function isOfPaper(container: string): boolean {
  return container === 'packet' || sameContainer(container, 'sachet');
}

function isRigid(container: string): boolean {
  return isCan(container) || sameContainer(container, 'tub') || container === 'jar' || container === 'bottle';
}

function oneOf(packs: readonly Pack[], size: UnsizedContainer['size']): Pack | null {
  if (packs.length < 2) return packs[0] ?? null;
  if (size === 'small') return packs[0] ?? null;
  if (size === 'large') return packs.at(-1) ?? null;
  const [usual, ...others] = packs.filter((pack) => pack.usual);
  return others.length === 0 ? (usual ?? null) : null;
}

/**
 * Whether packs are of another size than the usual one of their container, and not as much as usual ones in fewer packs: two tins of
 * 400 g may be one of 800 g.
 */
export function areOtherThanUsual(pack: Pack, count: number, { packs }: Sold): boolean {
  if (pack.usual) return false;
  const usual = packs.find((each) => each.usual && sameContainer(each.word, pack.word));
  if (usual === undefined) return false;
  const ratio = pack.grams.toNumber() / usual.grams.toNumber();
  const instead = Math.round(count * ratio);
  return instead < count || Math.abs(instead / (count * ratio) - 1) > equalPacks.toNumber();
}
