import type { Density, Exact, Kitchen, Pack, Sold } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { PackYaml, SoldYaml } from '../schema/food-schema.js';
import { readLabelSize } from '../schema/label-size.js';

const gramsIn: Readonly<Record<string, string>> = {
  g: '1',
  kg: '1000',
  mg: '0.001',
  oz: '28.349523125',
  lb: '453.59237',
};
const millilitresIn: Readonly<Record<string, string>> = { ml: '1', cl: '10', dl: '100', l: '1000' };

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
  const perUnit = gramsIn[label.unit];
  if (perUnit !== undefined) return label.size.times(perUnit);
  const millilitres = millilitresIn[label.unit] ?? (units as Readonly<Record<string, Exact>>)[label.unit];
  const density = densities.find(({ form }) => form === null);
  if (millilitres === undefined || density === undefined) return null;
  // A density per cup times cups leaves a tail of the 40th digit: off with it.
  return label.size.times(millilitres).times(density.gramsPerMl).toSignificantDigits(12);
}
