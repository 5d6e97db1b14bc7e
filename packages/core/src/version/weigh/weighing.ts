import { type UnsizedContainer, unsizedContainer } from '../../amount/container.js';
import type { LineReading } from '../../amount/reading.js';
import type { Dimension } from '../../amount/unit.js';
import type { Exact } from '../../exact.js';
import type { Food, Pack } from '../../food/food.js';
import type { Scales, StatedWeights, Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';

/** Both ends of what an amount weighs. */
export interface WeighedAmount {
  low: Weighed;
  high: Weighed | null;
  dimension: Dimension;
  /** Drained grams, where the line says drained and its pack has a sourced figure. */
  drainedGrams: Exact | null;
  /** The shop's pack, where packs are counted. */
  pack: Pack | null;
  /** How many packs or pieces. */
  count: Exact | null;
}

/** Everything needed to weigh an amount in the kitchen where it stands. */
export interface Weighing {
  food: Food | null;
  kitchen: Kitchen;
  prep: string;
  sizeWord: string;
  /** The container of a line that counts some and does not say what they hold. */
  container: UnsizedContainer | null;
  ownWeights: StatedWeights;
}

/** The preparation in which a food is measured: `1 cup sifted flour` is sifted first, `1 cup flour, sifted` afterwards. */
function measuredAs({ text, prep, food }: LineReading): string {
  if (!/\bsifted\b/i.test(prep) || food === null) return prep;
  return /\bsifted\b/i.test(text.slice(0, food.span.end)) ? prep : prep.replace(/\bsifted\b/i, '');
}

/** How an ingredient line is weighed. */
export function weighingOf(
  reading: LineReading,
  food: Food | null,
  kitchen: Kitchen,
  ownWeights: StatedWeights,
): Weighing {
  return {
    food,
    kitchen,
    prep: measuredAs(reading),
    sizeWord: reading.size?.text ?? '',
    container: unsizedContainer(reading),
    ownWeights,
  };
}

/** The part of a weighing that is the same for every unit. */
export function scales({ kitchen, prep, ownWeights }: Weighing): Scales {
  return { units: kitchen.units, prep, stated: ownWeights };
}
