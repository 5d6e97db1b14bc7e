import type { Span } from '../amount/reading.js';
import { isVolumeUnit } from '../amount/size.js';
import { type Stated, statedIn } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import { Exact } from '../exact.js';
import { translateName } from '../food/name.js';
import type { StatedDensities, Weighed } from '../food/weigh.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from '../recipe/recipe.js';
import { type Conversion, convertAmount } from './convert-amount.js';
import { amountEdits } from './edit.js';
import { convertFurther } from './further.js';
import { judgeBuying } from './judge-buying.js';
import { type Judged, judgeMeasuring } from './judge-measuring.js';
import type { Edit, LineNote, PlacedProblem, VersionLine } from './version.js';
import { weighingOf, weighReading, weighStated } from './weigh-line.js';

/** How lines are judged. */
export interface Judgement {
  tolerance: Exact;
}

/** Nothing is known of its weight. */
const unweighed: Weighed = { grams: null, millilitres: null };

/** A line as an author wrote it for a kitchen, judged there. */
export function writtenLine(
  line: Line,
  kitchen: Kitchen,
  densities: StatedDensities,
  judgement: Judgement,
): VersionLine {
  const stated = statedIn(line.reading);
  const weighed = weighReading(line.reading, weighingOf(line.reading, line.food, kitchen, densities))?.low ?? unweighed;
  const shopped = judge(line, stated, weighed, kitchen, judgement.tolerance);
  return {
    line,
    edits: [],
    stated,
    native: weighed,
    chosen: weighed,
    drift: null,
    bought: shopped.bought,
    problems: [...unread(line), ...shopped.problems, ...salts(line)],
    notes: line.food?.role === 'cure' ? [{ kind: 'as-written' }] : [],
  };
}

/** A native line converted for another kitchen. What conversion gives is judged as an author's own amount is, with no tolerance to lean on. */
export function convertedLine(line: Line, conversion: Conversion, judgement: Judgement): VersionLine {
  const { native, kitchen, densities } = conversion;
  if (line.food?.role === 'cure') return { ...writtenLine(line, native, densities, judgement), bought: null };
  const weighing = weighingOf(line.reading, line.food, native, densities);
  const weighed = weighReading(line.reading, weighing)?.low ?? unweighed;
  const stated = convertAmount(line.reading, line.food, conversion);
  const chosen = weighStated(stated, { ...weighing, kitchen, sizeWord: '' })?.low ?? unweighed;
  const shopped = judge(line, stated, chosen, kitchen, judgement.tolerance);
  return {
    line,
    edits: [
      ...amountInWords(line, stated, conversion),
      ...nameInWords(line, kitchen),
      ...furtherInWords(line, conversion),
    ],
    stated,
    native: weighed,
    chosen,
    drift: driftOf(weighed, chosen),
    bought: shopped.bought,
    problems: [...unread(line), ...shopped.problems, ...unconverted(line, conversion), ...salts(line)],
    notes: notesOn(line),
  };
}

function judge(
  line: Line,
  stated: Stated | null,
  weighed: Weighed,
  kitchen: Kitchen,
  tolerance: Exact,
): Pick<VersionLine, 'bought' | 'problems'> {
  if (stated === null) return { bought: null, problems: soldAtAll(line, kitchen) };
  const text = writtenAs(line, stated, kitchen);
  const judged: Judged = { stated, text, food: line.food, weighed, kitchen, tolerance };
  const measuring = judgeMeasuring(judged);
  const { bought, problem } = judgeBuying(judged);
  const problems = [measuring, problem].filter((found) => found !== null);
  return { bought, problems: problems.map((found) => ({ problem: found, span: amountSpan(line) })) };
}

/** What is read there: the author's words in the author's kitchen, ours in another. */
function writtenAs(line: Line, stated: Stated, kitchen: Kitchen): string {
  const span = amountSpan(line);
  const own = statedIn(line.reading);
  const same = own !== null && JSON.stringify(own) === JSON.stringify(stated);
  return same ? line.text.slice(span.start, span.end).trim() : writeStated(stated, kitchen);
}

function amountSpan({ reading }: Line): Span {
  return reading.amountSpans[0] ?? reading.food?.span ?? { start: 0, end: reading.text.length };
}

/** Even a line without an amount cannot be cooked where its food is not sold. */
function soldAtAll(line: Line, kitchen: Kitchen): PlacedProblem[] {
  if (line.food === null || line.reading.food === null) return [];
  const judged = {
    stated: { statements: [], pack: null, eggSize: null, approx: false },
    text: line.reading.food.text,
    food: line.food,
    weighed: unweighed,
    kitchen,
    tolerance: new Exact(0),
  };
  const { problem } = judgeBuying(judged);
  return problem === null || problem.rule !== 'unbuyable' || problem.reason !== 'not-sold'
    ? []
    : [{ problem, span: line.reading.food.span }];
}

function amountInWords(line: Line, stated: Stated | null, { kitchen }: Conversion): Edit[] {
  if (stated === null || line.reading.amounts.length === 0) return [];
  const same = JSON.stringify(statedIn(line.reading)) === JSON.stringify(stated);
  const size = line.reading.size;
  // The size word of an egg belongs to its country: a US large egg is a UK medium one.
  const egg = stated.eggSize !== null || (line.food?.id === 'egg' && stated.pack === null);
  const named = egg && size !== null;
  const text = writeStated(named ? { ...stated, eggSize: null } : stated, kitchen);
  const edits = same ? [] : amountEdits(line.reading, text);
  if (!named || size === null) return edits;
  const sizeText = stated.eggSize ?? (/\d/.test(kitchen.eggs.usual) ? '' : kitchen.eggs.usual);
  const gap = sizeText === '' && line.text[size.span.end] === ' ' ? 1 : 0;
  return [...edits, { start: size.span.start, end: size.span.end + gap, text: sizeText }];
}

function nameInWords({ food, reading }: Line, kitchen: Kitchen): Edit[] {
  if (food === null || reading.food === null) return [];
  const name = translateName(food, reading.food.text, kitchen.id);
  return name === null ? [] : [{ ...reading.food.span, text: name }];
}

function furtherInWords(line: Line, conversion: Conversion): Edit[] {
  return line.reading.further.flatMap((quantity) => {
    const text = convertFurther(quantity, line.food, conversion);
    return text === null ? [] : [{ ...quantity.span, text }];
  });
}

/** A further quantity that cannot be stated in the kitchen is a finding: a reader would take it as a unit of their own. */
function unconverted(line: Line, conversion: Conversion): PlacedProblem[] {
  return line.reading.further
    .filter((quantity) => convertFurther(quantity, line.food, conversion) === null)
    .map((quantity) => ({
      span: quantity.span,
      problem: {
        rule: 'unmeasurable',
        reason: 'no-tool',
        text: line.text.slice(quantity.span.start, quantity.span.end),
        term: quantity,
        food: line.food,
        nearest: [],
      },
    }));
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

/** A cure not given by weight, and kosher salt by volume, of which a spoonful has no one weight. */
function salts(line: Line): PlacedProblem[] {
  const { food, reading } = line;
  const first = reading.amounts[0];
  if (food === null || first === undefined) return [];
  const byWeight = reading.amounts.some(
    ({ unit }) => unit === 'g' || unit === 'kg' || unit === 'oz' || unit === 'lb' || unit === 'mg',
  );
  const span = amountSpan(line);
  const text = line.text.slice(span.start, span.end).trim();
  if (food.role === 'cure') return byWeight ? [] : [{ span, problem: { rule: 'curing-salt', text, food } }];
  if (food.id !== 'kosher-salt' || byWeight || !isVolumeUnit(first.unit)) return [];
  const grains = food.densities
    .map(({ gramsPerMl }) => gramsPerMl.times('4.92892159375'))
    .sort((a, b) => a.comparedTo(b));
  const lightest = grains[0];
  const heaviest = grains.at(-1);
  if (lightest === undefined || heaviest === undefined) return [];
  return [{ span, problem: { rule: 'which-salt', text, food, grams: [lightest, heaviest] } }];
}

function notesOn(line: Line): LineNote[] {
  return salts(line).some(({ problem }) => problem.rule === 'which-salt') ? [{ kind: 'lighter-kosher' }] : [];
}

/** Signed share by which the chosen amount differs from the native one. */
function driftOf(native: Weighed, chosen: Weighed): Exact | null {
  if (native.grams !== null && chosen.grams !== null && !native.grams.isZero())
    return chosen.grams.dividedBy(native.grams).minus(1);
  if (native.millilitres !== null && chosen.millilitres !== null && !native.millilitres.isZero()) {
    return chosen.millilitres.dividedBy(native.millilitres).minus(1);
  }
  return null;
}
