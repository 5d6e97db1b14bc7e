import { writeStated } from '../../amount/write.js';
import type { Line } from '../../recipe/recipe.js';
import type { Demand } from '../search/demand.js';
import { planPart } from '../search/part-plan.js';
import type { Searched, SearchInput } from '../search/search-recipe.js';
import { type Candidate, restated } from './candidate-change.js';
import type { Change } from './change.js';
import { withLine } from './changed-input.js';

/** A dish with half as much again of something is another dish. */
const widestChange = Math.log(1.5);

/** Amounts nearer together than this, as logarithms, are as good as one. */
const sameAmount = 0.02;

const mostAmounts = 16;

/** Other amounts that the native kitchen measures or buys of a line, the nearest first. */
export function otherAmounts(line: Line, { context }: Searched): Candidate[] {
  const { recipe, native } = context;
  const part = recipe.parts.find((each) => each.native.lines.includes(line));
  if (part === undefined || line.food?.role === 'cure') return [];
  const plan = planPart(part, { ...context, kitchen: native });
  const demand = plan.demands.find(({ lines }) => lines[0] === line && lines.length === 1);
  if (demand === undefined) return [];
  const own = Math.log(demand.quantity);
  const far = ({ log }: { log: number }): number => Math.abs(log - own);
  const kept: Demand['choices'] = [];
  for (const choice of [...demand.choices].sort((a, b) => far(a) - far(b))) {
    if (far(choice) > widestChange || kept.length === mostAmounts) break;
    if (far(choice) > sameAmount && kept.every(({ log }) => Math.abs(log - choice.log) > sameAmount)) kept.push(choice);
  }
  return kept.flatMap((choice) => {
    const to = demand.state(choice.index);
    // Another number of eggs can be written for theirs; another size stands elsewhere in the line.
    const changed = to.eggSize === null ? restated(line, to, context) : null;
    if (changed === null) return [];
    const change: Change = { kind: 'native-amount', line, to, text: writeStated(to, native) };
    return [{ change, asks: far(choice), make: (made: SearchInput) => withLine(made, changed) }];
  });
}
