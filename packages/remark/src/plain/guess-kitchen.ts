import { dimensionOf, type Food, type Kitchen, type LineReading } from '@retare/core';

/** The kitchen that a post was most likely written in. */
export interface KitchenGuess {
  kitchen: string;
  /** From 0 (nothing speaks for it more than for another) to 1. */
  confidence: number;
}

/** How much one sign speaks for a kitchen that has it over one that has not. */
const unitOdds = 3;
const wordOdds = 4;

/**
 * Guesses a post's native kitchen from its units and its words for foods. A guess is shown and never used in silence.
 *
 * @param readings The post's ingredient lines, with the foods that they name.
 * @param temperatures Units of the temperatures in its text.
 * @param kitchens Kitchens to choose from; of equals the first.
 */
export function guessKitchen(
  readings: readonly { reading: LineReading; food: Food | null }[],
  temperatures: readonly ('C' | 'F')[],
  kitchens: ReadonlyMap<string, Kitchen>,
): KitchenGuess {
  const scores = [...kitchens.values()].map((kitchen) => {
    const units = readings.reduce((sum, { reading }) => sum + unitScore(reading, kitchen), 0);
    const words = readings.reduce((sum, { reading, food }) => sum + wordScore(reading, food, kitchen), 0);
    const heat = temperatures.reduce((sum, unit) => sum + (kitchen.oven.unit === unit ? Math.log(unitOdds) : 0), 0);
    return { kitchen: kitchen.id, score: units + words + heat };
  });
  const best = scores.reduce((top, each) => (each.score > top.score ? each : top));
  const weights = scores.map(({ score }) => Math.exp(score - best.score));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const even = 1 / scores.length;
  return { kitchen: best.kitchen, confidence: Math.max(0, (1 / sum - even) / (1 - even)) };
}

function unitScore({ amounts, pack }: LineReading, { writes, cups, counter }: Kitchen): number {
  const units = [...amounts.slice(0, 1).map(({ unit }) => unit), ...(pack === null ? [] : [pack.unit])];
  return units.reduce((sum, unit) => {
    const dimension = dimensionOf(unit);
    // Shops that weigh in pounds are one country's.
    if (unit === counter.unit) return sum + Math.log(unitOdds) * 2;
    if (unit === 'cup') return sum + (cups === null ? 0 : Math.log(unitOdds));
    const known =
      dimension === 'mass'
        ? writes.mass.includes(unit as 'g')
        : dimension === 'volume'
          ? writes.volume.includes(unit as 'ml')
          : null;
    return sum + (known === true ? Math.log(unitOdds) : 0);
  }, 0);
}

/** A name that only some kitchens have for the food. */
function wordScore({ food: named }: LineReading, food: Food | null, kitchen: Kitchen): number {
  if (named === null || food === null) return 0;
  const word = named.text.toLowerCase();
  const has = (id: string): boolean =>
    (food.names[id] ?? []).some(({ one, many }) => one.toLowerCase() === word || many.toLowerCase() === word);
  return has('any') || !has(kitchen.id) ? 0 : Math.log(wordOdds);
}
