import type { LineReading } from '../../amount/reading.js';
import type { Stated } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import { eggsOfSize, wholeEggsFor } from '../../kitchen/egg.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import type { Conversion } from '../convert/convert-amount.js';
import { unlanded } from '../convert/land.js';
import { wholeLimit } from '../convert/whole-packs.js';
import { endsOf, rangeOf } from '../weigh/weighed-ends.js';
import type { WeighedAmount } from '../weigh/weighing.js';
import { wholeOnes } from './part-of-egg.js';

/**
 * As many as the author counts, of the size that the others are, where one is named at all.
 *
 * @param others The size of the recipe's other eggs there; null where there are none, or of no one size.
 */
export function looseEggs(stated: Stated, { size }: LineReading, others: EggSize | null, { eggs }: Kitchen): Stated {
  const eggSize = size === null || others === null || others.name === eggs.usual ? null : others.name;
  return { ...wholeOnes(stated), eggSize };
}

/** @param part What is used of each egg. */
export function convertEggs(
  stated: Stated,
  weighed: WeighedAmount,
  part: Exact,
  { kitchen, eggs: all }: Conversion,
): Stated {
  const needs = endsOf(weighed).flatMap(({ grams }) => grams?.dividedBy(part) ?? []);
  const together = all?.size == null ? null : eggsOfSize(all.size, needs, wholeLimit);
  const [eggs, more] = together ?? wholeEggsFor(kitchen, needs, wholeLimit) ?? [];
  if (eggs === undefined) return { ...(unlanded(weighed.low, kitchen) ?? stated), approx: stated.approx };
  const usual = eggs.size.name === kitchen.eggs.usual;
  return {
    statements: [[rangeOf(eggs.count, more?.count ?? null)]],
    pack: null,
    eggSize: usual ? null : eggs.size.name,
    approx: stated.approx,
  };
}
