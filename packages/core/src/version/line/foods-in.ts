import { statedIn } from '../../amount/stated.js';
import type { FurtherFood, VersionLine } from '../version.js';

/** All foods that a line has in a version, its first one first. */
export function foodsIn(line: VersionLine): FurtherFood[] {
  return [line, ...line.also];
}

/** Lines of a version whose food is, in part, in the amount of one line: a stand-in that was merged with it. */
export function servedBy(line: VersionLine, all: readonly VersionLine[]): VersionLine[] {
  if (line.stated === null || line.portion === line.chosen) return [];
  return all.filter(
    (each) =>
      each !== line &&
      statedIn(each.line.reading) !== null &&
      foodsIn(each).some(({ food, stated }) => food === line.food && stated === null),
  );
}
