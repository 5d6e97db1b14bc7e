import type { Caution, Version } from './version.js';

/** What a cook has to be told in this version, each once. */
export function cautionsFor(version: Version): Caution[] {
  const cautions: Caution[] = [];
  const mentions = version.steps.flatMap((steps) => steps.mentions);
  const core = mentions.find(({ mention }) => mention.kind === 'core');
  if (version.recipe.preserve === true) cautions.push({ kind: 'preserve' });
  if (version.parts.some((part) => part.lines.some(({ line }) => line.food?.role === 'cure')))
    cautions.push({ kind: 'cure' });
  if (core !== undefined) cautions.push({ kind: 'core-temperature', authority: authorityOf(version) });
  return cautions;
}

function authorityOf({ kitchen }: Version): string {
  return kitchen.safe[0]?.authority ?? '';
}
