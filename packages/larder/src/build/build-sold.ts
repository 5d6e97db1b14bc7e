import {
  type Density,
  type Exact,
  gramsIn,
  isMassUnit,
  type Kitchen,
  millilitresIn,
  type Pack,
  type Sold,
} from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { PackYaml, SoldYaml } from '../schema/food-schema.js';
import { readLabelSize } from '../schema/label-size.js';

/** What a pack's weight can be worked out from: the food's densities and the sizes of that kitchen's own volume units. */
export interface Weighing {
  densities: readonly Pick<Density, 'form' | 'gramsPerMl'>[];
  units: Kitchen['units'];
}

/** How a kitchen's shops sell a food, out of its checked data. */
export function buildSold(sold: SoldYaml, weighing: Weighing): Sold {
  return {
    sold: sold['not-sold'] !== true,
    packs: (sold.packs ?? []).map((pack) => buildPack(pack, weighing)),
    loose: sold.loose ?? false,
    singly: sold.singly ?? false,
    tap: sold.tap ?? false,
    standIns: (sold['stand-ins'] ?? []).map(({ parts, source }) => ({
      parts: parts.map(({ food, share }) => ({ food, share: exactOf(share) })),
      source,
    })),
    source: sold.source,
  };
}

function buildPack(pack: PackYaml, weighing: Weighing): Pack {
  const label = readLabelSize(pack.size);
  const grams = packGrams(pack, weighing);
  if (label === null || grams === null) throw new RangeError(`A pack of ${pack.size} was built without its weight`);
  const { marks } = pack;
  return {
    ...label,
    word: pack.word,
    grams,
    drainedGrams: pack.drained === undefined ? null : exactOf(pack.drained),
    whole: pack.whole,
    usual: pack.usual ?? false,
    marks: marks === undefined ? null : { size: exactOf(marks.size), unit: marks.unit, grams: exactOf(marks.grams) },
  };
}

/**
 * Net grams of a pack: as stated, by its label weight, or, for a volume, by the food's own density.
 *
 * @returns Null where none of them tells.
 */
export function packGrams(pack: PackYaml, { densities, units }: Weighing): Exact | null {
  if (pack.grams !== undefined) return exactOf(pack.grams);
  const label = readLabelSize(pack.size);
  if (label === null) return null;
  if (isMassUnit(label.unit)) return label.size.times(gramsIn(label.unit));
  const millilitres = label.unit === 'count' ? null : millilitresIn(label.unit, units);
  const density = densities.find(({ form }) => form === null);
  if (millilitres === null || density === undefined) return null;
  // A density per cup times cups leaves a tail of the 40th digit: off with it.
  return label.size.times(millilitres).times(density.gramsPerMl).toSignificantDigits(12);
}
