import { readingIn, readLine } from '../../amount/line/read-line.js';
import { type Stated, statedIn } from '../../amount/stated.js';
import { writeStated } from '../../amount/write.js';
import type { Line } from '../../recipe/recipe.js';
import { amountEdits, applyEdits } from '../../version/words/edit.js';
import type { Searched, SearchInput } from '../search/search-recipe.js';
import type { Change } from './change.js';

/** A change with how much it asks of an author, and how it is made. */
export interface Candidate {
  change: Change;
  /**
   * What is asked of the author, the least first. A change of a native amount counts by its logarithm and a wider limit by its width, so
   * that a tenth more milk is as much as a limit of 15 % for one of 5 %. The others stand at fixed places between: a weight that is only
   * added changes nothing of the dish, another food a good deal, a line written by hand is what is left.
   */
  asks: number;
  make(input: SearchInput): SearchInput;
}

/** Where the changes that are no matter of more or less stand among the others. */
export const asks = {
  weight: 0.05,
  noAnchor: 0.1,
  halfPack: 0.2,
  anchor: 0.3,
  packSize: 0.4,
  food: 0.5,
  ownVersion: 1,
};

/** A line with another amount; null where it would not be read so. */
export function restated(line: Line, to: Stated, { native }: Searched['context']): Line | null {
  const text = applyEdits(line.text, amountEdits(line.reading, writeStated(to, native)));
  const reading = readLine(text, readingIn(native));
  return statedIn(reading) === null || reading.doubt !== null ? null : { ...line, text, reading };
}
