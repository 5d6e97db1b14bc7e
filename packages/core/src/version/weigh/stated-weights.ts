import type { Quantity } from '../../amount/reading.js';
import { dimensionOf, gramsIn, isMassUnit, isVolumeUnit, millilitresIn } from '../../amount/size.js';
import { statedIn } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import { nothingStated, pieceKey, type StatedEgg, type StatedWeights, weigh } from '../../food/weigh.js';
import { ediblePart, eggSizeNamed, partOfEgg } from '../../kitchen/egg.js';
import type { EggSize, Kitchen } from '../../kitchen/kitchen.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import { packMeant } from '../../kitchen/shop/unsized-pack.js';
import type { Line } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';

/**
 * What the author says that foods weigh: `1 cup (130 g) flour` sets flour for the whole recipe, `1 onion (150 g)` onions.
 *
 * Eggs are those of the author's shops: their weight holds for eggs of that size, in a kitchen that sells the same. It is what goes into
 * the bowl, unless the line says that it is taken in the shell, or it is too heavy for anything else.
 *
 * @param kitchen Where the lines were written.
 * @returns The first statement of a food counts.
 */
export function weightsStatedIn(lines: readonly Line[], kitchen: Kitchen): StatedWeights {
  const [perMillilitre, perPiece] = [new Map<string, Exact>(), new Map<string, Exact>()];
  const eggs = new Map<string, StatedEgg>();
  for (const line of withPlus(lines)) {
    const { food, reading } = line;
    if (food === null || reading.pack !== null) continue;
    // Only two single numbers say how heavy a cup or a piece is.
    if (reading.amounts.some(({ high }) => high !== null)) continue;
    // And none that is not level.
    if (statedIn(reading)?.statements.some(([term]) => term?.fill != null)) continue;
    const grams =
      first(reading.amounts, ({ unit, low }) => (isMassUnit(unit) ? low.times(gramsIn(unit)) : null)) ??
      byVolume(line, kitchen);
    if (!grams?.isPositive()) continue;
    const each = perEach(grams, reading.amounts);
    if (each !== null && partOfEgg(food) !== null && each.unit === 'count') {
      const egg = eggOf(line, each.grams, kitchen);
      if (egg !== null) setFirst(eggs, food.id, egg);
    } else if (each !== null) setFirst(perPiece, pieceKey(food.id, each.unit), each.grams);
    // A volume that gave the weight itself says nothing of it.
    if (each !== null) continue;
    const millilitres = first(reading.amounts, ({ unit, low }) => {
      const size = isVolumeUnit(unit) ? millilitresIn(unit, kitchen.units) : null;
      return size === null ? null : low.times(size);
    });
    if (millilitres?.isPositive()) setFirst(perMillilitre, food.id, grams.dividedBy(millilitres));
  }
  return { perMillilitre, perPiece, eggs };
}

/** A piece that is stated again as a volume: `1 bunch parsley (1½ cups, chopped)`. */
function byVolume({ food, reading: { amounts, prep } }: Line, { id, units }: Kitchen): Exact | null {
  const [counted, ...others] = amounts;
  if (food === null || counted === undefined || dimensionOf(counted.unit) !== 'count') return null;
  // `1 can or 1½ cups`: what is in the shop's can without its water, or another way to have as much.
  const sold = counted.unit === 'can' || counted.unit === 'tin' ? soldIn(food, id) : null;
  if (sold !== null && packMeant(sold, { word: counted.unit, size: null }) !== null) return null;
  return first(others, ({ unit, low }) =>
    isVolumeUnit(unit) ? weigh(low, unit, food, { units, prep, stated: nothingStated }).grams : null,
  );
}

/** Null of a weight that no hen's egg has, such as that of a carton. */
function eggOf({ food, reading }: Line, grams: Exact, kitchen: Kitchen): StatedEgg | null {
  if (grams.greaterThan(heaviestEgg)) return null;
  const size = eggSizeNamed(kitchen, reading.size?.text ?? '');
  const isWhole = partOfEgg(food)?.equals(1) ?? false;
  return {
    kitchen,
    size: size?.name ?? kitchen.eggs.usual,
    grams: isWhole ? inBowl(grams, size, reading.text) : grams,
  };
}

/** What the author says with what the version's author says over it. */
export function bothStated(native: StatedWeights, own: StatedWeights): StatedWeights {
  return {
    perMillilitre: new Map([...native.perMillilitre, ...own.perMillilitre]),
    perPiece: new Map([...native.perPiece, ...own.perPiece]),
    eggs: new Map([...native.eggs, ...own.eggs]),
  };
}

/** Grams of one, where the amount is a count and is stated again as a weight. */
function perEach(grams: Exact, amounts: readonly Quantity[]): { unit: Quantity['unit']; grams: Exact } | null {
  const [counted] = amounts;
  if (counted === undefined || dimensionOf(counted.unit) !== 'count' || !counted.low.isPositive()) return null;
  return { unit: counted.unit, grams: grams.dividedBy(counted.low) };
}

/** Grams. Common practice, no source: classes end at 73 g, and double yolks weigh more. */
const heaviestEgg = 120;

/** No egg out of its shell weighs this much more than its class says: so heavy it was weighed in the shell, as `60 g eggs` are sold. */
const mostOutOfShell = 1.1;

function inBowl(grams: Exact, size: EggSize | null, text: string): Exact {
  if (/\bwithout (?:the |their )?shells?\b|\bshelled\b|\bout of (?:the |their )?shells?\b/i.test(text)) return grams;
  const heavy = size !== null && grams.greaterThan(size.edibleGrams.times(mostOutOfShell));
  return heavy || /\bin (?:the |their )?shells?\b/i.test(text) ? grams.times(ediblePart) : grams;
}

function setFirst<Value>(map: Map<string, Value>, key: string, value: Value): void {
  if (!map.has(key)) map.set(key, value);
}

function first(quantities: readonly Quantity[], size: (quantity: Quantity) => Exact | null): Exact | null {
  for (const quantity of quantities) {
    const found = size(quantity);
    if (found !== null) return found;
  }
  return null;
}
