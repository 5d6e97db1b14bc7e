import type { Stated } from '../../amount/stated.js';
import { type Exact, ratioOf } from '../../exact.js';
import { timesWeighed, unweighed, type Weighed } from '../../food/weigh.js';
import type { Line } from '../../recipe/recipe.js';
import type { FurtherFood, VersionFood } from '../../version/version.js';
import { nameWith } from '../../version/words/stand-in-words.js';
import type { Demand } from '../search/demand.js';
import type { DemandContext } from '../search/demands-of.js';
import { exactShare, weighChosen } from '../search/exact-share.js';
import type { PartPlan } from '../search/part-plan.js';
import type { Solution } from '../search/solve.js';
import { type Compared, comparedWith } from './compared-with.js';

/** A demand with the amount chosen for it. */
export interface Chosen {
  demand: Demand;
  stated: Stated;
  /** The lower end of a range. */
  weighed: Weighed;
  compared: Compared;
  /** Over the native need; null where they cannot be compared. */
  share: Exact | null;
}

/** What a solution chose for the demands of one part, weighed in the kitchen that it is chosen for. */
export function chosenIn({ demands }: PartPlan, index: number, solution: Solution, context: DemandContext): Chosen[] {
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

/** What a line has of a chosen amount, whose own words may be those of another line. */
export function foodOf(
  line: Line,
  { demand, weighed, compared, stated }: Chosen,
  { kitchen }: DemandContext,
): VersionFood {
  const { food, low, portions, lines } = demand;
  return {
    food,
    name: food === null || food === line.food ? null : nameWith(stated, food, kitchen.id),
    stated: null,
    native: compared.need,
    drains: compared.drains,
    boughtWith: null,
    chosen: weighed,
    portion: lines.length === 1 ? weighed : shareOf(weighed, portions[lines.indexOf(line)] ?? unweighed, low),
    drift: null,
    bought: null,
  };
}

/** A food that is in another line's amount: asked is what this line needs of it. */
export function elsewhereOf(line: Line, chosen: Chosen, context: DemandContext): FurtherFood {
  const { lines, portions } = chosen.demand;
  return { ...foodOf(line, chosen, context), native: portions[lines.indexOf(line)] ?? unweighed, alone: [] };
}

/** The same share of an amount as one need is of the whole. */
function shareOf(amount: Weighed, need: Weighed, whole: Weighed): Weighed {
  const share = ratioOf(need.grams, whole.grams) ?? ratioOf(need.millilitres, whole.millilitres);
  return share === null ? unweighed : timesWeighed(amount, share);
}
