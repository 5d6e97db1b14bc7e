import type { Line } from '../../recipe/recipe.js';
import { standInNote } from '../../version/line/stand-in-line.js';
import type { LineNote } from '../../version/version.js';
import { whichSalt } from '../../version/words/about-words.js';
import type { DemandContext } from '../search/demands-of.js';
import type { Chosen } from './chosen.js';

/** Of a stand-in every food counts, one that is had from another line's amount too. */
export function notesOn(line: Line, serving: readonly Chosen[], context: DemandContext): LineNote[] {
  const { food } = line;
  const salt: LineNote[] = whichSalt(line, context.native).length > 0 ? [{ kind: 'lighter-kosher' }] : [];
  if (food === null || serving.every(({ demand }) => demand.food === food)) return salt;
  const standIns = serving.flatMap(({ demand }) => demand.food ?? []);
  return [...salt, standInNote(food, standIns, context, context.foods)];
}
