import type { Exact } from '../../exact.js';
import type { Line } from '../../recipe/recipe.js';
import { versionOfLines } from '../../version/build-version.js';
import { joinedLine } from '../../version/line/joined-line.js';
import type { Setting } from '../../version/setting.js';
import type { Caution, Version, VersionLine } from '../../version/version.js';
import { pansByMention } from '../pans-of.js';
import type { DemandContext } from '../search/demands-of.js';
import type { PartPlan } from '../search/part-plan.js';
import type { Solution } from '../search/solve.js';
import { chosenIn } from './chosen.js';
import { reauthoredLine } from './reauthored-line.js';

/** What a version is made of. */
export interface Outcome {
  plans: readonly PartPlan[];
  /** Null where no line could be chosen together: then every line is converted by itself. */
  solution: Solution | null;
  batch: Exact;
  /** What a cook has to be told of the batch and its pans. */
  cautions: Caution[];
}

/** The version that a solution stands for: every line worded, weighed and judged again from what was chosen. */
export function reauthoredVersion(
  { plans, solution, batch, cautions }: Outcome,
  context: DemandContext,
  setting: Setting,
): Version {
  const lines = new Map<Line, VersionLine>();
  plans.forEach((plan, index) => {
    const chosen = solution === null ? [] : chosenIn(plan, index, solution, context);
    const lineOf = (line: Line): VersionLine => reauthoredLine(line, chosen, batch, context, setting);
    for (const line of plan.part.native.lines) lines.set(line, joinedLine(line, lineOf, context.kitchen));
  });
  const pans = pansByMention(solution?.pans ?? []);
  return versionOfLines(context.recipe, context.kitchen.id, setting, { lines, batchFactor: batch, pans, cautions });
}
