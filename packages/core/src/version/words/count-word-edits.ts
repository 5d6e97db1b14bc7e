import type { Span } from '../../amount/reading.js';
import type { Stated } from '../../amount/stated.js';
import { writeStatement } from '../../amount/write.js';
import { type CountedName, countedNames, partNamed } from '../../food/count-word.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Edit } from '../version.js';

/** The part that a line counts: `leaves` of `3 leaves of gelatine`. */
interface CountWord {
  span: Span;
  part: string;
  /** `of` behind it. */
  rest: string;
}

/**
 * What to replace in a line that counts a part of its food by a word of its own country: `3 leaves gelatine` are 3 sheets in a US kitchen.
 *
 * @param stated The amount there; it is written before the word where it is another.
 * @param stands Whether the amount reads as it was written.
 * @returns Null for a line that counts otherwise.
 */
export function countWordEdits(line: Line, stated: Stated, stands: boolean, kitchen: Kitchen): Edit[] | null {
  const word = countWordIn(line);
  const [amount] = line.reading.amountSpans;
  const terms = stated.statements[0];
  const [term] = terms ?? [];
  if (word === null || amount === undefined || term === undefined || stated.pack !== null) return null;
  if (term.unit !== 'count' && term.unit !== 'slice' && term.unit !== 'stick') return null;
  const here = wordHere(line, word.part, kitchen);
  const several = (term.high ?? term.low).greaterThan(1);
  const written = line.text.slice(word.span.start, word.span.end);
  const said = here === null ? written : several ? here.word.many : here.word.one;
  if (stands) return said.toLowerCase() === written.toLowerCase() ? [] : [{ ...word.span, text: said }];
  const count = writeStatement([{ ...term, unit: 'count' }]);
  return [{ ...amount, text: `${count} ${here === null ? numbered(written, several) : said}${word.rest}` }];
}

/** A word that the kitchen has no other for, in the number of the amount. */
function numbered(written: string, several: boolean): string {
  const one = partNamed(written) ?? written;
  if (!several) return one;
  return one === 'leaf' ? 'leaves' : `${one}s`;
}

/** The food's name behind such a word, as the kitchen says it: the gelatine of a leaf is the gelatin of a sheet. */
export function nameBehindCountWord(line: Line, kitchen: Kitchen): string | null {
  const word = countWordIn(line);
  const { food, name } = line;
  if (word === null || food === null || name === null) return null;
  const isPart = Object.keys(food.names).some((id) =>
    countedNames(food, id).some((each) => each.food.toLowerCase() === name.text.trim().toLowerCase()),
  );
  const here = wordHere(line, word.part, kitchen) ?? understood(line, word.part, kitchen);
  return isPart && here !== null && here.food.toLowerCase() !== name.text.trim().toLowerCase() ? here.food : null;
}

/** The kitchen's own word; null where it says the author's, or has none of that kind. */
function wordHere(line: Line, part: string, kitchen: Kitchen): CountedName | null {
  if (line.food === null || understood(line, part, kitchen) !== null) return null;
  const names = countedNames(line.food, kitchen.id);
  return names.find(({ word }) => word.one === 'slice') ?? names[0] ?? null;
}

function understood({ food }: Line, part: string, kitchen: Kitchen): CountedName | null {
  return (food === null ? undefined : countedNames(food, kitchen.id).find(({ word }) => word.one === part)) ?? null;
}

function countWordIn({ text, reading }: Line): CountWord | null {
  const [amount] = reading.amountSpans;
  if (amount === undefined || reading.pack !== null || reading.amounts.length === 0) return null;
  const words = text.slice(amount.start, amount.end);
  const full = words.trimEnd();
  const counted = /\sof$/u.test(full) ? full.slice(0, -'of'.length).trimEnd() : words;
  const rest = words.slice(counted.length);
  const last = counted.slice(counted.lastIndexOf(' ') + 1);
  const part = partNamed(last);
  if (part === null || last === counted) return null;
  const end = amount.start + counted.length;
  return { span: { start: end - last.length, end }, part, rest };
}
