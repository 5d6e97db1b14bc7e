import type { Exact } from '../../exact.js';
import type { Span } from '../reading.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';

/** The holes of a pan for muffins, buns or small puddings. */
export interface Holes {
  /** Null where they are not counted: `a muffin tin`. */
  count: Exact | null;
  mini: boolean;
  /** Number and word (`12-cup`); empty, before the pan's name, where there is no number. */
  span: Span;
  first: number;
}

/** What each hollow of such a pan is called; a cup or a count only where the label says what pan it is: a Bundt pan's ten cups are a volume. */
const holeWords = new Set(['hole', 'holes', 'well', 'wells', 'cavity', 'cavities']);
const cupWords = new Set(['cup', 'cups', 'count']);
const muffinWords = new Set(['muffin', 'muffins', 'cupcake', 'cupcakes', 'popover', 'popovers']);
const vesselWords = new Set(['pan', 'pans', 'tin', 'tins', 'tray', 'trays']);

/** Reads `12-cup muffin pan`, `12-hole bun tin`, `mini muffin pan`. */
export function readHoles(tokens: Tokens): Holes | null {
  const words = tokens.list.map(({ lower }) => lower);
  const muffin = words.findIndex((word) => muffinWords.has(word));
  const mini =
    muffin > 0 && (words[muffin - 1] === 'mini' || (words[muffin - 1] === '-' && words[muffin - 2] === 'mini'));
  for (let at = 0; at < tokens.length; at += 1) {
    const number = readNumber(tokens, at);
    if (number === null || number.article || number.fraction || !number.value.isInteger()) continue;
    const word = tokens.word(number.next) === '-' ? number.next + 1 : number.next;
    const isHoles = holeWords.has(tokens.word(word)) || (muffin >= 0 && cupWords.has(tokens.word(word)));
    if (!isHoles) continue;
    return { count: number.value, mini, span: { start: tokens.at(at).start, end: tokens.at(word).end }, first: at };
  }
  if (muffin < 0 || !vesselWords.has(tokens.word(muffin + 1))) return null;
  const name = mini ? words.lastIndexOf('mini', muffin) : muffin;
  const { start } = tokens.at(name);
  return { count: null, mini, span: { start, end: start }, first: name };
}
