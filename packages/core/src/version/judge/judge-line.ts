import type { Span } from '../../amount/reading.js';
import { type Stated, sameStated, statedIn } from '../../amount/stated.js';
import { writeStated } from '../../amount/write.js';
import { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import { unweighed, type Weighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Bought } from '../../kitchen/shop/buy.js';
import type { Line } from '../../recipe/recipe.js';
import type { PlacedProblem } from '../version.js';
import { judgeBuying } from './judge-buying.js';
import { type Judged, judgeMeasuring } from './judge-measuring.js';

/** An amount of a line in one version. */
export interface LineAmount {
  stated: Stated | null;
  weighed: Weighed;
  /** The line's food there: a stand-in where its own is not sold. */
  food: Food | null;
}

/** What to buy for a line, and what stands in the way of measuring and buying it. */
export function judgeLine(
  line: Line,
  { stated, weighed, food }: LineAmount,
  kitchen: Kitchen,
  tolerance: Exact,
): { bought: Bought | null; problems: PlacedProblem[] } {
  if (stated === null) return { bought: null, problems: soldAtAll(line, food, kitchen) };
  const judged: Judged = { stated, text: writtenAs(line, stated, kitchen), food, weighed, kitchen, tolerance };
  const { bought, problem } = judgeBuying(judged);
  // What comes in whole packs is not measured: four and a half cups of beans would be advice against their tins.
  const isPacked = problem?.rule === 'unbuyable' && problem.reason === 'part-of-pack';
  const problems = [isPacked ? null : judgeMeasuring(judged), problem].filter((found) => found !== null);
  return { bought, problems: problems.map((found) => ({ problem: found, span: amountSpan(line) })) };
}

/** What is read there: the author's words in the author's kitchen, ours in another. */
export function writtenAs(line: Line, stated: Stated, kitchen: Kitchen): string {
  return sameStated(statedIn(line.reading), stated) ? amountWords(line) : writeStated(stated, kitchen);
}

/** The author's words for a line's amount; for what states none of its own (`1 lb each beef and pork`) where that is said. */
export function amountWords(line: Line): string {
  const { start, end } = amountSpan(line);
  const [shared] = line.reading.amounts;
  if (start < end || shared === undefined) return line.text.slice(start, end).trim();
  return line.reading.text.slice(shared.span.start, shared.span.end).trim();
}

/** Where a line states its amount, else its food. */
export function amountSpan({ reading }: Line): Span {
  return reading.amountSpans[0] ?? reading.food?.span ?? { start: 0, end: reading.text.length };
}

/** Even a line without an amount cannot be cooked where its food is not sold. */
function soldAtAll(line: Line, food: Food | null, kitchen: Kitchen): PlacedProblem[] {
  if (food === null || line.name === null) return [];
  const { text, span } = line.name;
  const stated: Stated = { statements: [], pack: null, eggSize: null, approx: false };
  const { problem } = judgeBuying({ stated, text, food, weighed: unweighed, kitchen, tolerance: new Exact(0) });
  return problem?.rule === 'unbuyable' && problem.reason === 'not-sold' ? [{ problem, span }] : [];
}
