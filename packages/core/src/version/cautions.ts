import { Exact } from '../exact.js';
import { leavesEggRaw } from './egg/raw-egg.js';
import type { Caution, Version } from './version.js';

/** What a cook has to be told in this version, each once. */
export function cautionsFor(version: Version): Caution[] {
  const cautions: Caution[] = [];
  const mentions = version.steps.flatMap((steps) => steps.mentions);
  const core = mentions.find(({ mention }) => mention.kind === 'core');
  if (version.recipe.preserve === true) cautions.push({ kind: 'preserve' });
  if (version.parts.some((part) => part.lines.some(({ line }) => line.food?.role === 'cure')))
    cautions.push({ kind: 'cure' });
  if (leavesEggRaw(version.recipe)) cautions.push({ kind: 'raw-egg' });
  if (core !== undefined) cautions.push({ kind: 'core-temperature', authority: authorityOf(version) });
  return [...cautions, ...ovenCaution(version), ...bakingCaution(version)];
}

/** An oven that the author's heat is beyond; what an author wrote for the kitchen itself stands. */
function ovenCaution({ kitchen, steps }: Version): Caution[] {
  const problems = steps.filter(({ from }) => from !== kitchen.id).flatMap(({ mentions }) => mentions);
  for (const { problem } of problems.flatMap((mention) => mention.problems)) {
    if (problem.rule === 'oven-beyond-dial') return [{ kind: 'oven', text: problem.text, beyond: problem.beyond }];
  }
  return [];
}

/** A batter that stands this much deeper or shallower takes another time to bake. */
const depthCaution = new Exact('0.1');

function bakingCaution({ batchFactor, steps }: Version): Caution[] {
  const depths = steps
    .flatMap(({ mentions }) => mentions)
    .flatMap(({ areaDrift }) => (areaDrift === null ? [] : [batchFactor.dividedBy(areaDrift.plus(1)).minus(1)]));
  const drift = depths.find((each) => each.abs().greaterThan(depthCaution));
  return drift === undefined ? [] : [{ kind: 'bake', changed: 'depth', drift }];
}

function authorityOf({ kitchen }: Version): string {
  return kitchen.safe[0]?.authority ?? '';
}
