import type { Exact } from '../../exact.js';
import type { Line } from '../../recipe/recipe.js';
import { judgeLine } from '../../version/judge/judge-line.js';
import { unsaidPack } from '../../version/judge/unsaid-pack.js';
import { writtenLine } from '../../version/line/written-line.js';
import type { Setting } from '../../version/setting.js';
import type { FurtherFood, VersionLine } from '../../version/version.js';
import { problemsOfWords } from '../../version/words/about-words.js';
import { furtherInWords } from '../../version/words/further-in-words.js';
import { type StandInEdits, standInEdits, withFurther } from '../../version/words/stand-in-words.js';
import { amountInWords, nameInWords, unconverted } from '../../version/words/words-in-line.js';
import type { Demand } from '../search/demand.js';
import type { DemandContext } from '../search/demands-of.js';
import { type Chosen, elsewhereOf, foodOf } from './chosen.js';
import { notesOn } from './notes-on.js';
import { withoutChoice } from './unchosen-line.js';

/**
 * A native line in the version that was chosen: worded, weighed and judged again. A cure stays as it was written.
 *
 * @param chosen What was chosen for the part's demands.
 */
export function reauthoredLine(
  line: Line,
  chosen: readonly Chosen[],
  batch: Exact,
  context: DemandContext,
  setting: Setting,
): VersionLine {
  const { native, kitchen, ownWeights } = context;
  if (line.food?.role === 'cure') return { ...writtenLine(line, native, ownWeights, setting.tolerance), bought: null };
  const serving = chosen.filter(({ demand }) => demand.lines.includes(line));
  const own = serving.filter(({ demand }) => homeOf(demand) === line);
  if (own.length === 0) return withoutChoice(line, serving, context, setting);
  const judged = own.map(({ demand, stated, weighed }) =>
    judgeLine(line, { stated, weighed, food: demand.food }, kitchen, setting.tolerance),
  );
  const unsaid = own.flatMap(({ demand, stated }) => unsaidPack(line, stated, demand.low, kitchen));
  const { together, alone, names } = worded(line, own, context);
  const further = furtherInWords(line, context);
  const foods = own.map(
    (each, at): FurtherFood => ({
      ...foodOf(line, each, context),
      name: names[at] ?? null,
      stated: each.stated,
      drift: each.share?.dividedBy(batch).minus(1) ?? null,
      bought: judged[at]?.bought ?? null,
      alone: withFurther(alone[at] ?? [], further),
    }),
  );
  const [first, ...others] = foods;
  if (first === undefined) throw new RangeError('A line without a food.');
  const elsewhere = serving.filter((each) => !own.includes(each)).map((each) => elsewhereOf(line, each, context));
  return {
    line,
    ...first,
    edits: [...together, ...further],
    also: [...others, ...elsewhere],
    problems: [
      ...problemsOfWords(line, native),
      ...(judged.some(({ problems }) => problems.length > 0) ? [] : unsaid),
      ...judged.flatMap(({ problems }) => problems),
      ...unconverted(line, [...together, ...further], context),
    ],
    notes: notesOn(line, serving, context),
  };
}

/** Where a demand is shown: at the line that is of its own food, else at the line that it stands in for. */
function homeOf({ lines, food }: Demand): Line | undefined {
  return lines.find((line) => line.food === food) ?? lines[0];
}

function worded(line: Line, own: readonly Chosen[], context: DemandContext): StandInEdits {
  const { kitchen } = context;
  const [first] = own;
  if (first === undefined) return { together: [], alone: [], names: [] };
  if (first.demand.food !== line.food) {
    const foods = own.flatMap(({ demand: { food }, stated }) => (food === null ? [] : [{ food, stated }]));
    return standInEdits(line, foods, kitchen);
  }
  const edits = [
    ...amountInWords(line, first.stated, kitchen, {
      conversion: context,
      share: first.share,
    }),
    ...nameInWords(line, first.stated, kitchen),
  ];
  return { together: edits, alone: [edits], names: [] };
}
