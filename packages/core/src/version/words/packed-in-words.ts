import { isVolumeUnit } from '../../amount/size.js';
import type { Stated } from '../../amount/stated.js';
import type { Line } from '../../recipe/recipe.js';
import type { Edit } from '../version.js';
import { overlap } from './edit.js';

/** How full a cup is pressed: a word of the measure, and not of the food. A food packed in something is not meant. */
const pressed = /\b(?:(?:firmly|lightly|loosely|tightly|well|gently)[ -])?packed\b(?! (?:in|into|with|for)\b)/giu;

/** What joins the words to others before or behind them, longest first. */
const before = [', and ', ' and ', ', ', ' ('];
const behind = [' and ', ', '];

/** Words on how firmly a cup is pressed fall away where nothing there is measured by volume: a scale presses nothing. */
export function packedInWords({ text, reading, name }: Line, stated: Stated): Edit[] {
  const unit = stated.statements[0]?.[0]?.unit;
  const native = reading.amounts[0]?.unit;
  if (unit === undefined || native === undefined || !isVolumeUnit(native) || isVolumeUnit(unit)) return [];
  return [...text.matchAll(pressed)].flatMap(({ 0: words, index }): Edit[] => {
    const span = withJoint(text, { start: index, end: index + words.length });
    const isTaken = [...reading.amountSpans, ...(name === null ? [] : [name.span])].some((each) => overlap(each, span));
    return isTaken ? [] : [{ ...span, text: '' }];
  });
}

/** The words with what would stand alone without them: a comma, an `and`, brackets, the blank to the next word. */
function withJoint(text: string, { start, end }: { start: number; end: number }): { start: number; end: number } {
  const next = behind.find((joint) => text.startsWith(joint, end));
  const last = before.find((joint) => text.endsWith(joint, start));
  if (last === ' (' && text[end] === ')') return { start: start - last.length, end: end + 1 };
  if (last !== undefined && last !== ' (' && (next === undefined || last !== ', '))
    return { start: start - last.length, end };
  if (next !== undefined) return { start, end: end + next.length };
  return { start, end: text[end] === ' ' ? end + 1 : end };
}
