import type { Quantity } from '../amount/reading.js';
import { gramsIn, isMassUnit, isVolumeUnit, type KitchenUnits, millilitresIn } from '../amount/size.js';
import type { Exact } from '../exact.js';
import type { StatedDensities } from '../food/weigh.js';
import type { Line } from '../recipe/recipe.js';

/**
 * Densities that the author states: `1 cup (130 g) flour` sets flour for the whole recipe.
 *
 * @returns Grams per millilitre by food id; the first statement of a food counts.
 */
export function densitiesStatedIn(lines: readonly Line[], units: KitchenUnits): StatedDensities {
  const densities = new Map<string, Exact>();
  for (const { food, reading } of lines) {
    if (food === null || reading.pack !== null || densities.has(food.id)) continue;
    const grams = first(reading.amounts, (quantity) =>
      isMassUnit(quantity.unit) ? quantity.low.times(gramsIn(quantity.unit)) : null,
    );
    const millilitres = first(reading.amounts, (quantity) => {
      const each = isVolumeUnit(quantity.unit) ? millilitresIn(quantity.unit, units) : null;
      return each === null ? null : quantity.low.times(each);
    });
    // Only two single numbers say how heavy a cup is.
    if (grams === null || millilitres === null || reading.amounts.some(({ high }) => high !== null)) continue;
    if (grams.isPositive() && millilitres.isPositive()) densities.set(food.id, grams.dividedBy(millilitres));
  }
  return densities;
}

function first(quantities: readonly Quantity[], size: (quantity: Quantity) => Exact | null): Exact | null {
  for (const quantity of quantities) {
    const found = size(quantity);
    if (found !== null) return found;
  }
  return null;
}
