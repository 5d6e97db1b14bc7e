import type { Line } from '../../recipe/recipe.js';
import type { Edit, VersionLine } from '../version.js';

/**
 * A line of a version with what else its words count, which is a line of its own but for them.
 *
 * @param lineOf How a line is made for the version.
 */
export function joinedLine(line: Line, lineOf: (line: Line) => VersionLine): VersionLine {
  const own = lineOf(line);
  if (line.plus === undefined) return own;
  const plus = joinedLine(line.plus, lineOf);
  const isFree = (edit: Edit): boolean => !own.edits.some(({ start, end }) => start < edit.end && edit.start < end);
  const edits = plus.edits.filter(isFree);
  return {
    ...own,
    plus,
    edits: [...own.edits, ...edits],
    alone: [...own.alone, ...edits],
    problems: [...own.problems, ...plus.problems],
    notes: [...own.notes, ...plus.notes],
  };
}

/** A line of a version, and those that its words count beside it. */
export function linesIn(line: VersionLine): VersionLine[] {
  return line.plus === undefined ? [line] : [line, ...linesIn(line.plus)];
}
