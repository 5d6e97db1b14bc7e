import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import { withPlus } from '../../recipe/with-plus.js';
import type { VersionLine } from '../version.js';
import { eachInWords } from '../words/each-in-words.js';
import { overlap } from '../words/edit.js';

/**
 * A line of a version with what else its words count, which is a line of its own but for them.
 *
 * @param lineOf How a line is made for the version.
 */
export function joinedLine(line: Line, lineOf: (line: Line) => VersionLine, kitchen: Kitchen): VersionLine {
  const own = lineOf(line);
  if (line.plus === undefined) return own;
  if (line.each !== undefined) return withEach(own, withPlus([line.plus]).map(lineOf), kitchen);
  const plus = joinedLine(line.plus, lineOf, kitchen);
  const edits = plus.edits.filter((edit) => !own.edits.some((each) => overlap(each, edit)));
  return {
    ...own,
    plus,
    edits: [...own.edits, ...edits],
    alone: [...own.alone, ...edits],
    problems: [...own.problems, ...plus.problems],
    notes: [...own.notes, ...plus.notes],
  };
}

/** One amount for each of several foods. */
function withEach(own: VersionLine, others: readonly VersionLine[], kitchen: Kitchen): VersionLine {
  const edits = eachInWords([own, ...others], kitchen);
  const plus = others.reduceRight<VersionLine | null>(
    (rest, part) => (rest === null ? part : { ...part, plus: rest }),
    null,
  );
  return {
    ...own,
    ...(plus === null ? {} : { plus }),
    edits,
    alone: edits,
    problems: [own, ...others].flatMap(({ problems }) => problems),
    notes: [own, ...others].flatMap(({ notes }) => notes),
  };
}

/** A line of a version, and those that its words count beside it. */
export function linesIn(line: VersionLine): VersionLine[] {
  return line.plus === undefined ? [line] : [line, ...linesIn(line.plus)];
}
