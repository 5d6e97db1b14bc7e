import { isMassUnit, isVolumeUnit, millilitresIn } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import { amountSpan, amountWords } from '../judge/judge-line.js';
import type { PlacedProblem } from '../version.js';
import { ambiguousUnits } from './ambiguous-unit.js';

/** What is wrong with a line's words wherever it is cooked: unread amounts, unknown foods, salts that a spoon does not tell. */
export function problemsOfWords(line: Line, kitchen: Kitchen): PlacedProblem[] {
  return [...unread(line), ...ambiguousUnits(line, kitchen), ...curingSalt(line), ...whichSalt(line, kitchen)];
}

function unread({ reading, food, text }: Line): PlacedProblem[] {
  if (reading.doubt !== null) {
    const { because, instead, span } = reading.doubt;
    return [{ span, problem: { rule: 'unreadable-amount', text: reading.doubt.text, because, instead } }];
  }
  if (food !== null || reading.kind === 'not-an-ingredient') return [];
  const span = reading.food?.span ?? { start: 0, end: text.length };
  return [{ span, problem: { rule: 'unknown-food', text: text.slice(span.start, span.end) } }];
}

/** A cure that is not given by weight. */
function curingSalt(line: Line): PlacedProblem[] {
  if (line.food?.role !== 'cure' || line.reading.amounts.length === 0 || isWeighed(line)) return [];
  const span = amountSpan(line);
  const text = amountWords(line);
  return [{ span, problem: { rule: 'curing-salt', text, food: line.food } }];
}

/** Kosher salt by volume without grams: a spoonful of it has no one weight. */
export function whichSalt(line: Line, kitchen: Kitchen): PlacedProblem[] {
  const { food, reading } = line;
  const first = reading.amounts[0];
  if (food?.id !== 'kosher-salt' || first === undefined || isWeighed(line) || !isVolumeUnit(first.unit)) return [];
  const spoon = millilitresIn('tsp', kitchen.units) ?? new Exact(5);
  const grains = food.densities.map(({ gramsPerMl }) => gramsPerMl.times(spoon)).sort((a, b) => a.comparedTo(b));
  const lightest = grains[0];
  const heaviest = grains.at(-1);
  if (lightest === undefined || heaviest === undefined) return [];
  const span = amountSpan(line);
  const text = amountWords(line);
  return [{ span, problem: { rule: 'which-salt', text, food, grams: [lightest, heaviest] } }];
}

function isWeighed({ reading }: Line): boolean {
  return (
    reading.amounts.some(({ unit }) => isMassUnit(unit)) || (reading.pack !== null && isMassUnit(reading.pack.unit))
  );
}
