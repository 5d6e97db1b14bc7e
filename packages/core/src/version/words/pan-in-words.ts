import { isLengthUnit } from '../../amount/size.js';
import type { Term } from '../../amount/stated.js';
import { plural, writeNumber, writeTerm } from '../../amount/write.js';
import type { Kitchen, Pan } from '../../kitchen/kitchen.js';
import { lengthFor } from '../../kitchen/measure/length.js';
import type { Mention } from '../../recipe/recipe.js';
import { applyEdits } from './edit.js';

/** An annotated pan. */
export type PanMention = Extract<Mention, { kind: 'pan' }>;

/** A pan that takes the place of one that is written. */
export interface PanHere {
  /** Null where it is none of the kitchen's usual ones. */
  pan: Pan | null;
  /** Its size in words; null where the author's words hold. */
  text: string | null;
  /** How many of it are used. */
  count: number;
}

/** Whether a batter or filling stands in a pan: cookies stand on a sheet, a roast in its tin, and a skillet or a pizza for itself. */
export function carriesBatch({ text, reading }: PanMention): boolean {
  return reading.shape !== 'sheet' && reading.shape !== 'stove' && !/\broasting\b/i.test(text);
}

/** How many pans an annotation means. */
export function panCount({ count, reading }: PanMention): number {
  return (count ?? reading.count)?.toNumber() ?? 1;
}

/**
 * An annotation's words with another pan in them. The size and, where it changes, the number alone are replaced: a number before the size
 * and the words around it (`two 9-inch rounds`) keep their place.
 */
export function panInWords(mention: PanMention, here: PanHere, kitchen: Kitchen): string {
  const { text, reading } = mention;
  const { start, end } = reading.span;
  const written = text.slice(start, end);
  const counted = reading.count === null ? '' : countWords(written);
  const isKept = here.count === panCount(mention);
  if (here.text === null && isKept) return text;
  const rim = reading.depth === null ? null : rimOf(mention, here, kitchen);
  const size = here.text === null ? written.slice(counted.length) : here.text;
  // A number that stands in `count` is changed there.
  const number = isKept || mention.count !== null ? counted : `${numberWord(here.count)} `;
  const edits = [{ start, end, text: number + (reading.depthSpan === null ? withRim(size, rim) : size) }];
  if (rim !== null && reading.depthSpan !== null) edits.push({ ...reading.depthSpan, text: writeTerm(rim) });
  const glued = /^[\p{L}\p{N}]/u.test(text.slice(end)) ? ' ' : '';
  const words = applyEdits(
    text,
    edits.map((edit, at) => (at === 0 ? { ...edit, text: edit.text + glued } : edit)),
  );
  if (isKept) return words;
  return here.count < 2 ? words.replace(lastVessels, '$1') : words.replace(lastVessel, plural);
}

/** `two loaf pans` for `a loaf pan`, and `one loaf pan` for two. */
const lastVessel = /\b(?:pan|tin|dish|mould|mold|plate|springform)$/i;
const lastVessels = /\b(pan|tin|dish|mould|mold|plate|springform)(?:e?s)$/i;

/** The words for how many, as written: `two `, `2 × `, `two (`. */
function countWords(words: string): string {
  return /^(?:\p{L}+|\d+)\s*(?:[x×]\s*)?\(?/u.exec(words)?.[0] ?? '';
}

const numberWords = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A word: beside the figures of a size it cannot be taken for one of them. */
function numberWord(count: number): string {
  return numberWords[count] ?? `${count} ×`;
}

/** The rim that is stated where the author stated one: that of the pan, else the author's. Null where the author's words hold. */
export function rimOf({ reading, depth }: PanMention, { pan, text }: PanHere, kitchen: Kitchen): Term | null {
  const { unit } = reading;
  const own = depth ?? (reading.depth === null || !isLengthUnit(unit) ? null : { low: reading.depth, unit });
  if (own === null || text === null) return null;
  return pan === null || pan.depth === null
    ? lengthFor(own.low, own.unit, kitchen)
    : { low: pan.depth, high: null, unit: pan.unit };
}

/** A third side is the depth of the rim. */
function withRim(sides: string, rim: Term | null): string {
  const at = sides.lastIndexOf(' ');
  if (rim === null || sides.slice(at + 1) !== rim.unit) return sides;
  return `${sides.slice(0, at)} × ${writeNumber(rim.low, 'cm')}${sides.slice(at)}`;
}
