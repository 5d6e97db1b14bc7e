import type { LineReading } from '../../amount/reading.js';
import type { FoundFood } from '../find/find.js';
import { clausesBehind } from './clauses-behind.js';

type Find = (words: string) => FoundFood | null;

/** Where the words of an alternative end. */
const ends = new Set(['(', ')', '[', ']', ';', ':', '.', '|', '–', '—']);
/** Longer ones are sentences. */
const mostLetters = 60;

/**
 * What stands before a food's head word where the line was read as if it were the food: `2 long or 4 short cucumbers`, `canola,
 * peanut or other vegetable oil`, `Cajun / Creole seasoning`, `fire-roasted diced tomatoes`.
 */
export function withHeadBehind(reading: LineReading, find: Find): FoundFood | null {
  if (reading.food === null) return null;
  const found = withOtherHead(reading, find) ?? goingOn(reading, find);
  return found === null ? null : { food: found.food, ...reading.food.span };
}

function withOtherHead({ text, food }: LineReading, find: Find): FoundFood | null {
  const { start, end } = food?.span ?? { start: 0, end: 0 };
  let stop = end;
  while (stop < text.length && stop - end < mostLetters && !ends.has(text[stop] ?? '')) stop += 1;
  const joint = /\s*\/\s*|\sor\s/.exec(text.slice(end, stop));
  if (joint === null || !/^[\s,\p{L}-]*$/u.test(text.slice(end, end + joint.index))) return null;
  // What is listed between commas before the joint has the head word too.
  const [other = ''] = text
    .slice(end + joint.index + joint[0].length, stop)
    .replace(/\d+/g, '')
    .split(',');
  return find(`${text.slice(start, end)} or ${other}`);
}

/** Where a name does not go on. */
const joints = /\b(?:of|or|and|in|with|without|for|from|to|at|on|as|if|made|not)\b/i;

function goingOn(reading: LineReading, find: Find): FoundFood | null {
  const [behind] = clausesBehind(reading);
  if (reading.food === null || behind === undefined || !behind.adjoins || behind.inBrackets) return null;
  if (behind.text.length > mostLetters || joints.test(behind.text)) return null;
  return find(`${reading.food.text} ${behind.text}`);
}
