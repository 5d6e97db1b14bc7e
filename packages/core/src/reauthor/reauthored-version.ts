import type { Stated } from '../amount/stated.js';
import { type Exact, ratioOf } from '../exact.js';
import { timesWeighed, unweighed, type Weighed } from '../food/weigh.js';
import { standInOf } from '../kitchen/shop/stand-in.js';
import type { Line } from '../recipe/recipe.js';
import { versionOfLines } from '../version/build-version.js';
import { judgeLine } from '../version/judge/judge-line.js';
import { convertedLine } from '../version/line/converted-line.js';
import { standInNote } from '../version/line/stand-in-line.js';
import { writtenLine } from '../version/line/written-line.js';
import type { Setting } from '../version/setting.js';
import type { FurtherFood, LineNote, Version, VersionFood, VersionLine } from '../version/version.js';
import { problemsOfWords, whichSalt } from '../version/words/about-words.js';
import { nameWith, type StandInEdits, standInEdits, withFurther } from '../version/words/stand-in-words.js';
import { amountInWords, furtherInWords, nameInWords, unconverted } from '../version/words/words-in-line.js';
import { pansByMention } from './pans-of.js';
import type { Demand } from './search/demand.js';
import type { DemandContext } from './search/demands-of.js';
import { type Compared, comparedWith, exactShare, weighChosen } from './search/exact-share.js';
import type { PartPlan } from './search/part-plan.js';
import type { Solution } from './search/solve.js';

/** A demand with the amount chosen for it. */
interface Chosen {
  demand: Demand;
  stated: Stated;
  /** The lower end of a range. */
  weighed: Weighed;
  compared: Compared;
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
    pans: pansByMention(solution?.pans ?? []),
  });
}

function chosenIn({ demands }: PartPlan, index: number, solution: Solution, context: DemandContext): Chosen[] {
  return demands.flatMap((demand, at): Chosen[] => {
    const choice = solution.parts[index]?.choices[at];
    if (choice === undefined) return [];
    const stated = demand.state(choice.index);
    const weighed = weighChosen(demand, stated, context);
    const compared = comparedWith(demand, stated, weighed, context);
    const share = demand.loose ? null : exactShare(demand, stated, weighed, context);
    return [{ demand, stated, weighed: weighed?.low ?? unweighed, compared, share }];
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
  const conversion = { native, kitchen, ownWeights, foods: context.foods };
  if (line.food?.role === 'cure') return { ...writtenLine(line, native, ownWeights, setting.tolerance), bought: null };
  const serving = chosen.filter(({ demand }) => demand.lines.includes(line));
  const own = serving.filter(({ demand }) => homeOf(demand) === line);
  if (own.length === 0) return withoutChoice(line, serving, context, setting);
  const judged = own.map(({ demand, stated, weighed }) =>
    judgeLine(line, { stated, weighed, food: demand.food }, kitchen, setting.tolerance),
  );
  const { together, alone, names } = worded(line, own, context);
  const further = furtherInWords(line, conversion);
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
      ...judged.flatMap(({ problems }) => problems),
      ...unconverted(line, [...together, ...further], conversion),
    ],
    notes: notesOn(line, serving, context),
  };
}

/** What a line has of a chosen amount, whose own words may be those of another line. */
function foodOf(line: Line, { demand, weighed, compared, stated }: Chosen, { kitchen }: DemandContext): VersionFood {
  const { food, low, portions, lines } = demand;
  return {
    food,
    name: food === null || food === line.food ? null : nameWith(stated, food, kitchen.id),
    stated: null,
    native: compared.need,
    drains: compared.drains,
    chosen: weighed,
    portion: lines.length === 1 ? weighed : shareOf(weighed, portions[lines.indexOf(line)] ?? unweighed, low),
    drift: null,
    bought: null,
  };
}

/** A food that is in another line's amount: asked is what this line needs of it. */
function elsewhereOf(line: Line, chosen: Chosen, context: DemandContext): FurtherFood {
  const { lines, portions } = chosen.demand;
  return { ...foodOf(line, chosen, context), native: portions[lines.indexOf(line)] ?? unweighed, alone: [] };
}

/** The same share of an amount as one need is of the whole. */
function shareOf(amount: Weighed, need: Weighed, whole: Weighed): Weighed {
  const share = ratioOf(need.grams, whole.grams) ?? ratioOf(need.millilitres, whole.millilitres);
  return share === null ? unweighed : timesWeighed(amount, share);
}

/** A line without an amount is only named anew; one that is wholly in other lines says where. */
function withoutChoice(line: Line, serving: readonly Chosen[], context: DemandContext, setting: Setting): VersionLine {
  const { native, kitchen, ownWeights } = context;
  const converted = convertedLine(line, { native, kitchen, ownWeights }, setting.tolerance, setting.foods);
  const [first, ...others] = serving;
  if (first === undefined) return standInByName(line, converted, context);
  const names = serving.map((each) => nameOf(each, kitchen.id)).join(' and ');
  const text = `(${line.name?.text ?? line.text}: in the ${names} of this list)`;
  const edits = [{ start: 0, end: line.text.length, text }];
  return {
    line,
    ...elsewhereOf(line, first, context),
    edits,
    alone: edits,
    also: others.map((each) => elsewhereOf(line, each, context)),
    problems: [],
    notes: [...converted.notes.filter(({ kind }) => kind === 'as-written'), ...notesOn(line, serving, context)],
  };
}

/** Salt to taste has no amount, and another salt will do. */
function standInByName(line: Line, converted: VersionLine, context: DemandContext): VersionLine {
  const { kitchen, foods } = context;
  if (converted.stated !== null || line.food === null || line.name === null) return converted;
  const found = standInOf(line.food, kitchen, foods)?.map(({ food }) => food);
  const first = found?.[0];
  if (found === undefined || first === undefined) return converted;
  const { together, alone, names } = standInEdits(
    line,
    found.map((food) => ({ food, stated: null })),
    kitchen,
  );
  const edits = withFurther(together, converted.edits);
  const problems = converted.problems.filter(({ problem }) => problem.rule !== 'unbuyable');
  const notes = [standInNote(line.food, found, context, foods)];
  // Salt and pepper to taste stay one line.
  return {
    ...converted,
    food: first,
    name: names[0] ?? null,
    edits,
    alone: alone.length > 1 ? edits : (alone[0] ?? edits),
    problems,
    notes,
  };
}

function worded(line: Line, own: readonly Chosen[], { native, kitchen, ownWeights }: DemandContext): StandInEdits {
  const [first] = own;
  if (first === undefined) return { together: [], alone: [], names: [] };
  if (first.demand.food !== line.food) {
    const foods = own.flatMap(({ demand: { food }, stated }) => (food === null ? [] : [{ food, stated }]));
    return standInEdits(line, foods, kitchen);
  }
  const edits = [
    ...amountInWords(line, first.stated, kitchen, { native, kitchen, ownWeights }),
    ...nameInWords(line, first.stated, kitchen),
  ];
  return { together: edits, alone: [edits], names: [] };
}

function nameOf({ demand: { food }, stated }: Chosen, kitchen: string): string {
  return food === null ? '' : nameWith(stated, food, kitchen);
}

/** Of a stand-in every food counts, one that is had from another line's amount too. */
function notesOn(line: Line, serving: readonly Chosen[], context: DemandContext): LineNote[] {
  const { food } = line;
  const salt: LineNote[] = whichSalt(line, context.native).length > 0 ? [{ kind: 'lighter-kosher' }] : [];
  if (food === null || serving.every(({ demand }) => demand.food === food)) return salt;
  const standIns = serving.flatMap(({ demand }) => demand.food ?? []);
  return [...salt, standInNote(food, standIns, context, context.foods)];
}
