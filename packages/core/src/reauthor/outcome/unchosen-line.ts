import { standInOf } from '../../kitchen/shop/stand-in.js';
import type { Line } from '../../recipe/recipe.js';
import { convertedLine } from '../../version/line/converted-line.js';
import { standInNote } from '../../version/line/stand-in-line.js';
import type { Setting } from '../../version/setting.js';
import type { VersionLine } from '../../version/version.js';
import { nameWith, standInEdits, withFurther } from '../../version/words/stand-in-words.js';
import type { DemandContext } from '../search/demands-of.js';
import { type Chosen, elsewhereOf } from './chosen.js';
import { notesOn } from './notes-on.js';

/** A line without an amount is only named anew; one that is wholly in other lines says where. */
export function withoutChoice(
  line: Line,
  serving: readonly Chosen[],
  context: DemandContext,
  setting: Setting,
): VersionLine {
  const { kitchen } = context;
  const converted = convertedLine(line, context, setting.tolerance, setting.foods);
  const [first, ...others] = serving;
  if (first === undefined) return standInByName(line, converted, context);
  const names = serving.map((each) => nameOf(each, kitchen.id)).join(' and ');
  const text = `(${line.name?.text ?? line.text}: in the ${names} of this list)`;
  // What is counted within a line begins behind blanks.
  const start = line.text.length - line.text.trimStart().length;
  const edits = [{ start, end: line.text.length, text }];
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

function nameOf({ demand: { food }, stated }: Chosen, kitchen: string): string {
  return food === null ? '' : nameWith(stated, food, kitchen);
}
