import type { LineReading } from '@retare/core';
import type { LineLabel } from './corpus.ts';

/** How a line came out. `unread`: an amount that is labelled was left alone. */
export type Verdict = 'right' | 'unread' | 'wrong';

/** What is wrong with a reading, in the four things that are scored. */
export interface LineScore {
  kind: Verdict;
  /** Amounts, units, approximations and pack together. */
  amount: Verdict;
  food: Verdict;
  optional: Verdict;
}

/** Four places at most, as labels are written. */
function written(value: { toDecimalPlaces: (places: number) => { toFixed: () => string } } | null): string | null {
  return value === null ? null : value.toDecimalPlaces(4).toFixed();
}

/** A reading's amounts and pack, in the words of the labels. */
export function amountText(reading: LineReading): string {
  const amounts = reading.amounts.map(({ low, high, unit, approx }) => [written(low), written(high), unit, approx]);
  const { pack } = reading;
  // An unwritten count is labelled as 1.
  const size = pack === null ? null : [written(pack.count) ?? '1', written(pack.size), pack.unit, pack.word];
  return JSON.stringify([amounts, size]);
}

function labelText({ amounts, pack }: LineLabel): string {
  const list = amounts.map(({ low, high, unit, approx }) => [low, high, unit, approx]);
  return JSON.stringify([list, pack === null ? null : [pack.count, pack.size, pack.unit, pack.word]]);
}

/** Scores a reading against its label. An ambiguous line is right as labelled, or unread. */
export function scoreLine(reading: LineReading, label: LineLabel): LineScore {
  const read = amountText(reading);
  const unread = reading.amounts.length === 0;
  const right = read === labelText(label) || (label.ambiguous && unread);
  const amount: Verdict = right ? 'right' : unread ? 'unread' : 'wrong';
  const kind = reading.kind === label.kind || (label.ambiguous && unread) ? 'right' : 'wrong';
  const food = sameFood(reading.food?.text ?? '', label.food) ? 'right' : reading.food === null ? 'unread' : 'wrong';
  return { kind, amount, food, optional: reading.optional === label.optional ? 'right' : 'wrong' };
}

function fold(word: string): string {
  if (/(?:ss|us|is)$/u.test(word)) return word;
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`;
  if (word.endsWith('ves') && word.length > 4) return `${word.slice(0, -3)}f`;
  if (/(?:o|ch|sh|s|x)es$/u.test(word)) return word.slice(0, -2);
  return word.endsWith('s') && word.length > 3 ? word.slice(0, -1) : word;
}

function wordsOf(name: string): string[] {
  return name
    .toLowerCase()
    .split(/[^\p{L}\p{M}\p{N}'’]+/u)
    .filter((word) => word !== '')
    .map(fold);
}

/**
 * Whether two names are the same food: one contains the other as whole words, and both end in the same head word. A number or a
 * bracket left in the name read is wrong.
 */
export function sameFood(read: string, label: string): boolean {
  const [one, other] = [wordsOf(read), wordsOf(label)];
  if (one.join(' ') === other.join(' ')) return true;
  if (/[\d()[\]]/u.test(read) && !/[\d()[\]]/u.test(label)) return false;
  if (one.length === 0 || other.length === 0 || one.at(-1) !== other.at(-1)) return false;
  return ` ${one.join(' ')} `.includes(` ${other.join(' ')} `) || ` ${other.join(' ')} `.includes(` ${one.join(' ')} `);
}
