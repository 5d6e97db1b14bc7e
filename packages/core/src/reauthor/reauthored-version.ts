import type { Stated } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import type { Exact } from '../exact.js';
import type { Food } from '../food/food.js';
import { nameIn } from '../food/name.js';
import type { Weighed } from '../food/weigh.js';
import { soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from '../recipe/recipe.js';
import { problemsOfWords, whichSalt } from '../version/about-words.js';
import type { Setting } from '../version/build-version.js';
import { versionOfLines } from '../version/build-version.js';
import { convertedLine } from '../version/converted-line.js';
import { amountEdits } from '../version/edit.js';
import { judgeLine } from '../version/judge-line.js';
import { nameWith } from '../version/stand-in-line.js';
import type { Edit, LineNote, Version, VersionLine } from '../version/version.js';
import { amountInWords, furtherInWords, nameInWords, unconverted } from '../version/words-in-line.js';
import { unweighed, writtenLine } from '../version/written-line.js';
import type { Demand } from './demand.js';
import type { DemandContext } from './demands-of.js';
import { exactShare, weighChosen } from './exact-share.js';
import { panWords } from './pan-words.js';
import type { PartPlan } from './part-plan.js';
import type { Solution } from './solve.js';

/** A demand with the amount chosen for it. */
interface Chosen {
  demand: Demand;
  stated: Stated;
  /** The lower end of a range. */
  weighed: Weighed;
  /** Over the native need; null where they cannot be compared. */
  share: Exact | null;
}

/**
 * The version that a solution stands for: every line worded, weighed and judged again from what was chosen.
 *
 * @param solution Null where no line could be chosen together: then every line is converted by itself.
 */
export function reauthoredVersion(
  plans: readonly PartPlan[],
  solution: Solution | null,
  batch: Exact,
  context: DemandContext,
  setting: Setting,
): Version {
  const lines = new Map<Line, VersionLine>();
  plans.forEach((plan, index) => {
    const chosen = solution === null ? [] : chosenIn(plan, index, solution, context);
    for (const line of plan.part.native.lines) lines.set(line, versionLine(line, chosen, batch, context, setting));
  });
  return versionOfLines(context.recipe, context.kitchen.id, setting, {
    lines,
    batchFactor: batch,
    pans: panWords(solution?.pans ?? [], context),
  });
}

function chosenIn({ demands }: PartPlan, index: number, solution: Solution, context: DemandContext): Chosen[] {
  return demands.flatMap((demand, at): Chosen[] => {
    const choice = solution.parts[index]?.choices[at];
    if (choice === undefined) return [];
    const stated = demand.state(choice.index);
    const weighed = weighChosen(demand, stated, context);
    return [
      { demand, stated, weighed: weighed?.low ?? unweighed, share: exactShare(demand, stated, weighed, context) },
    ];
  });
}

/** Where a demand is shown: at the line that is of its own food, else at the line that it stands in for. */
function homeOf({ lines, food }: Demand): Line | undefined {
  return lines.find((line) => line.food === food) ?? lines[0];
}

function versionLine(
  line: Line,
  chosen: readonly Chosen[],
  batch: Exact,
  context: DemandContext,
  setting: Setting,
): VersionLine {
  const { native, kitchen, ownWeights } = context;
  const conversion = { native, kitchen, ownWeights };
  if (line.food?.role === 'cure') return { ...writtenLine(line, native, ownWeights, setting.tolerance), bought: null };
  const own = chosen.filter(({ demand }) => homeOf(demand) === line);
  const first = own[0];
  if (first === undefined) return withoutChoice(line, chosen, context, setting);
  const { bought, problems } = judgeOwn(line, own, context, setting.tolerance);
  return {
    line,
    food: first.demand.food,
    edits: [...worded(line, own, context), ...furtherInWords(line, conversion)],
    stated: first.stated,
    native: first.demand.low,
    chosen: first.weighed,
    drift: first.share?.dividedBy(batch).minus(1) ?? null,
    bought,
    problems: [...problemsOfWords(line, native), ...problems, ...unconverted(line, conversion)],
    notes: notesOn(line, own, context),
  };
}

/** A line without an amount is only named anew; one that is wholly in other lines says where. */
function withoutChoice(line: Line, chosen: readonly Chosen[], context: DemandContext, setting: Setting): VersionLine {
  const { native, kitchen, ownWeights } = context;
  const converted = convertedLine(line, { native, kitchen, ownWeights }, setting.tolerance, setting.foods);
  const into = chosen.filter(({ demand }) => demand.lines.includes(line));
  if (into.length === 0) return standInByName(line, converted, context);
  const names = into.map((each) => nameOf(each, kitchen.id)).join(' and ');
  const text = `(${line.name?.text ?? line.text}: in the ${names} of this list)`;
  const edits = [{ start: 0, end: line.text.length, text }];
  return {
    ...converted,
    edits,
    stated: null,
    bought: null,
    drift: null,
    problems: [],
    notes: notesOn(line, into, context),
  };
}

/** Salt to taste has no amount, and another salt will do. */
function standInByName(line: Line, converted: VersionLine, { native, kitchen, foods }: DemandContext): VersionLine {
  const sold = line.food === null ? null : soldIn(line.food, kitchen.id);
  if (converted.stated !== null || line.food === null || line.name === null || sold?.sold !== false) return converted;
  const found = sold.standIns
    .map(({ parts }) => parts.flatMap(({ food }) => foods.get(food) ?? []))
    .find((parts, at) => parts.length === sold.standIns[at]?.parts.length);
  const first = found?.[0];
  if (found === undefined || first === undefined) return converted;
  const text = found.map((food) => nameIn(food, kitchen.id).many).join(' and ');
  const edits = converted.edits.filter(
    ({ start, end }) => end <= (line.name?.span.start ?? 0) || start >= (line.name?.span.end ?? 0),
  );
  const problems = converted.problems.filter(({ problem }) => problem.rule !== 'unbuyable');
  const notes = [standInNote(line.food, found, native, kitchen)];
  return { ...converted, food: first, edits: [...edits, { ...line.name.span, text }], problems, notes };
}

function judgeOwn(
  line: Line,
  own: readonly Chosen[],
  { kitchen }: DemandContext,
  tolerance: Exact,
): Pick<VersionLine, 'bought' | 'problems'> {
  const judged = own.map(({ demand, stated, weighed }) =>
    judgeLine(line, { stated, weighed, food: demand.food }, kitchen, tolerance),
  );
  return { bought: judged[0]?.bought ?? null, problems: judged.flatMap(({ problems }) => problems) };
}

function worded(line: Line, own: readonly Chosen[], { native, kitchen, ownWeights }: DemandContext): Edit[] {
  const [first, ...others] = own;
  if (first === undefined) return [];
  const same = first.demand.food === line.food;
  const edits = same
    ? amountInWords(line, first.stated, kitchen, { native, kitchen, ownWeights })
    : amountEdits(line.reading, writeStated(first.stated, kitchen));
  if (line.name === null) return edits;
  const name = same ? (nameInWords(line, first.stated, kitchen)[0]?.text ?? line.name.text) : nameOf(first, kitchen.id);
  const also = others.map((each) => ` and ${writeStated(each.stated, kitchen)} ${nameOf(each, kitchen.id)}`).join('');
  // A name may take in the blank before it.
  const blank = line.name.text.slice(0, line.name.text.length - line.name.text.trimStart().length);
  const text = `${blank}${name.trimStart()}${also}`;
  return text === line.name.text ? edits : [...edits, { ...line.name.span, text }];
}

function nameOf({ demand: { food }, stated }: Chosen, kitchen: string): string {
  return food === null ? '' : nameWith(stated, food, kitchen);
}

function notesOn(line: Line, own: readonly Chosen[], { native, kitchen }: DemandContext): LineNote[] {
  const { food } = line;
  const salt: LineNote[] = whichSalt(line, native).length > 0 ? [{ kind: 'lighter-kosher' }] : [];
  if (food === null || own.every(({ demand }) => demand.food === food)) return salt;
  const foods = own.flatMap(({ demand }) => demand.food ?? []);
  return [...salt, standInNote(food, foods, native, kitchen)];
}

/** What it stands in for, and the allergens that it adds. */
function standInNote(food: Food, foods: readonly Food[], native: Kitchen, kitchen: Kitchen): LineNote {
  const allergens = foods.flatMap((each) => each.allergens).filter((each) => !food.allergens.includes(each));
  const name = nameIn(food, native.id).many;
  return { kind: 'stand-in', food: name, kitchen: kitchen.name, allergens: [...new Set(allergens)] };
}
