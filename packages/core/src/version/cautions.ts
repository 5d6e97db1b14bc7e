import { Exact } from '../exact.js';
import { listsCure } from '../recipe/has-cure.js';
import { leavesEggRaw } from './egg/raw-egg.js';
import type { Caution, Version, VersionSteps } from './version.js';
import { carriesBatch } from './words/pan-in-words.js';

/** What a cook has to be told in this version beside how long it bakes, each once. */
export function cautionsFor(version: Version): Caution[] {
  const cautions: Caution[] = [];
  const mentions = version.steps.flatMap((steps) => steps.mentions);
  const core = mentions.find(({ mention }) => mention.kind === 'core');
  if (version.recipe.preserve === true) cautions.push({ kind: 'preserve' });
  if (version.parts.some((part) => listsCure(part.lines.map(({ line }) => line)))) cautions.push({ kind: 'cure' });
  if (leavesEggRaw(version.recipe)) cautions.push({ kind: 'raw-egg' });
  if (core !== undefined) cautions.push({ kind: 'core-temperature', authority: authorityOf(version) });
  return [...cautions, ...ovenCautions(version)];
}

/** The heats that no oven there is set to, each once; what an author wrote for the kitchen itself stands. */
function ovenCautions({ kitchen, steps }: Version): Caution[] {
  const mentions = steps.filter(({ from }) => from !== kitchen.id).flatMap((each) => each.mentions);
  const found = new Map<string, Caution>();
  for (const { problem } of mentions.flatMap(({ problems }) => problems)) {
    if (problem.rule !== 'oven-beyond-dial') continue;
    found.set(problem.text, { kind: 'oven', text: problem.text, beyond: problem.beyond });
  }
  return [...found.values()];
}

/** A batter that stands this much deeper or shallower takes another time to bake, as a fraction. */
export const depthCaution = 0.1;

/** A native batch in pans of another base stands deeper or shallower in them. */
export function bakingCautions(steps: readonly VersionSteps[]): Caution[] {
  const depths = steps
    .flatMap(({ mentions }) => mentions)
    .flatMap(({ mention, areaDrift }) =>
      areaDrift === null || (mention.kind === 'pan' && !carriesBatch(mention))
        ? []
        : [new Exact(1).dividedBy(areaDrift.plus(1)).minus(1)],
    );
  const drift = depths.find((each) => each.abs().greaterThan(depthCaution));
  return drift === undefined ? [] : [{ kind: 'bake', changed: 'depth', drift }];
}

function authorityOf({ kitchen }: Version): string {
  return kitchen.safe[0]?.authority ?? '';
}
