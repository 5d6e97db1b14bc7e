import { type Stated, stateOne } from '../../amount/stated.js';
import { Exact, toStep } from '../../exact.js';
import type { Food } from '../../food/food.js';
import { pieceGrams, type Weighed } from '../../food/weigh.js';
import { rangeOf } from '../weigh/weighed-ends.js';

/** Grams of one piece of a food; null where the larder does not say, and of what pours: a lime is a piece, its juice is not. */
export function pieceOf(food: Food): Exact | null {
  return food.pours ? null : pieceGrams(food, 'count', '');
}

/** Up to so many pieces a cook halves one. Common practice, no source. */
export const halvedUpTo = 2.5;

/** What was counted is counted again, in pieces or halves of the other food, where they come near: no two carrots weigh the same. */
export function inPieces(
  { low, high }: { low: Weighed; high: Weighed | null },
  food: Food,
  approx: boolean,
): Stated | null {
  const each = pieceOf(food);
  if (each === null || low.grams === null) return null;
  const counts = [low, high].flatMap((end) => end?.grams?.dividedBy(each) ?? []);
  const step = counts.some((count) => count.lessThanOrEqualTo(halvedUpTo)) ? '0.5' : '1';
  const landed = counts.map((count) => toStep(count, step));
  const near = landed.every((count, at) =>
    count
      .dividedBy(counts[at] ?? 1)
      .minus(1)
      .abs()
      .lessThanOrEqualTo(pieceLimit),
  );
  const first = landed[0];
  if (!near || first === undefined) return null;
  return stateOne(rangeOf(first, landed[1] ?? null), approx);
}

/** Pieces of food differ by as much. Common practice, no source. */
const pieceLimit = new Exact('0.25');
