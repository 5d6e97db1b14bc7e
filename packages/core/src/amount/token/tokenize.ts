import { Exact } from '../../exact.js';
import { isSlash, vulgarFraction } from './fraction.js';
import { markupMask } from './markup.js';
import { folded, isBlankAt, isDigitAt, isLetterAt, signLength } from './signs.js';
import { type NumberForm, type Token, Tokens } from './token.js';

/** More digits than any amount has: such a number is left as a word, so that no arithmetic is done on it. */
const mostDigits = 12;
const currency = new Set(['$', '£', '€', '#', '№']);

/**
 * Cuts a text into numbers, words and single signs, in one pass.
 *
 * @param text Any text. Mark-up is passed over when `markdown` is set; offsets stay those of the text as given.
 */
export function tokenize(text: string, { markdown = false }: { markdown?: boolean } = {}): Tokens {
  const mask = markdown ? markupMask(text) : null;
  const list: Token[] = [];
  let gap = true;
  let marked = false;
  let at = 0;
  while (at < text.length) {
    if (mask?.[at] === 1) {
      marked = true;
      at += 1;
    } else if (isBlankAt(text, at)) {
      gap = true;
      at += 1;
    } else {
      const token = tokenAt(text, at, gap ? undefined : list.at(-1));
      token.gap = gap;
      token.marked = marked;
      list.push(token);
      at = token.end;
      gap = false;
      marked = false;
    }
  }
  return new Tokens(text, list);
}

/** The token at an offset; `before` is the one that it is glued to. */
function tokenAt(text: string, at: number, before: Token | undefined): Token {
  if (isLetterAt(text, at)) return wordToken(text, at, wordEnd(text, at));
  const point = text[at] === '.' && isDigitAt(text, at + 1) && before?.kind !== 'number';
  if (isDigitAt(text, at) || point) return numberAt(text, at, before !== undefined && currency.has(before.text));
  const end = at + signLength(text, at);
  const sign = text.slice(at, end);
  const fraction = vulgarFraction(sign);
  if (fraction !== null) return numberToken(text, at, end, fraction, 'fraction');
  // Folding would make a letter of the sign º.
  return newToken('mark', sign, sign, at, end);
}

function numberAt(text: string, at: number, afterSign: boolean): Token {
  const whole = digitsFrom(text, at);
  let end = at + whole.length;
  const joint = text[end] ?? '';
  const behind = digitsFrom(text, end + 1);
  if (behind !== '' && (joint === '.' || joint === ',')) {
    end += 1 + behind.length;
    return decimal(text, at, end, { whole, joint, behind, afterSign });
  }
  if (behind !== '' && isSlash(joint) && whole !== '') {
    end += 1 + behind.length;
    return slashed(text, at, end, { whole, behind, afterSign });
  }
  const fraction = vulgarFraction(joint);
  if (fraction !== null && whole.length <= mostDigits) {
    return numberToken(text, at, end + joint.length, new Exact(plain(whole)).plus(fraction), 'mixed');
  }
  if (afterSign || whole.length > mostDigits || oddWhole(text, end, whole)) {
    return wordToken(text, at, wordEnd(text, end));
  }
  return numberToken(text, at, end, new Exact(plain(whole)), 'whole');
}

/** `00` flour, `2%`, `1:1`, `7up`, `2nd`: digits that are no quantity. */
function oddWhole(text: string, end: number, whole: string): boolean {
  if (whole.length > 1 && whole.startsWith('0')) return true;
  if (text[end] === ':' && isDigitAt(text, end + 1)) return true;
  if (isPercent(text, end)) return true;
  const ordinal = text.slice(end, end + 2).toLowerCase();
  const known = ordinal === 'st' || ordinal === 'nd' || ordinal === 'rd' || ordinal === 'th' || ordinal === 'up';
  return known && !isLetterAt(text, end + 2);
}

function isPercent(text: string, end: number): boolean {
  return text[end] === '%' || (text[end + 1] === '%' && isBlankAt(text, end));
}

interface Parts {
  whole: string;
  behind: string;
  afterSign: boolean;
}

function decimal(
  text: string,
  at: number,
  end: number,
  { whole, joint, behind, afterSign }: Parts & { joint: string },
): Token {
  const more = (text[end] === '.' || text[end] === ',') && isDigitAt(text, end + 1);
  const long = whole.length + behind.length > mostDigits;
  if (afterSign || more || long || isPercent(text, end)) return wordToken(text, at, wordEnd(text, end));
  const grouped = joint === ',' && behind.length === 3 && whole.length <= 3 && whole !== '' && !whole.startsWith('0');
  const digits = plain(grouped ? `${whole}${behind}` : `${whole === '' ? '0' : whole}.${behind}`);
  const token = numberToken(text, at, end, new Exact(digits), grouped ? 'whole' : 'decimal');
  if (behind.length !== 3 || whole === '' || whole.startsWith('0')) return token;
  token.triple = joint === ',' ? 'comma' : 'point';
  return token;
}

function slashed(text: string, at: number, end: number, { whole, behind, afterSign }: Parts): Token {
  const short = whole.length <= 3 && behind.length <= 3;
  const more = isSlash(text[end] ?? '') && isDigitAt(text, end + 1);
  const [above, below] = short ? [Number(plain(whole)), Number(plain(behind))] : [0, 0];
  if (afterSign || more || below === 0 || above >= below || above === 0 || isPercent(text, end)) {
    return wordToken(text, at, wordEnd(text, end));
  }
  return numberToken(text, at, end, new Exact(above).div(below), 'fraction');
}

function newToken(kind: Token['kind'], text: string, lower: string, start: number, end: number): Token {
  return { kind, text, lower, start, end, gap: false, marked: false, value: null, form: null, triple: null };
}

function numberToken(text: string, start: number, end: number, value: Exact, form: NumberForm): Token {
  const token = wordToken(text, start, end);
  token.kind = 'number';
  token.value = value;
  token.form = form;
  return token;
}

function wordToken(text: string, start: number, end: number): Token {
  const written = text.slice(start, end);
  return newToken('word', written, folded(written), start, end);
}

/** Letters, and digits that follow letters (`T45`), but `x` before a digit is the sign of `9x13`. */
function wordEnd(text: string, from: number): number {
  let at = from;
  while (at < text.length) {
    if (isLetterAt(text, at)) at += signLength(text, at);
    else if (isDigitAt(text, at) && !isCross(text, from, at)) at += 1;
    else if (at > from && (text[at] === "'" || text[at] === '’') && isLetterAt(text, at + 1)) at += 1;
    else break;
  }
  return at;
}

function isCross(text: string, from: number, at: number): boolean {
  return at === from + 1 && (text[from] === 'x' || text[from] === 'X');
}

function digitsFrom(text: string, from: number): string {
  let at = from;
  while (isDigitAt(text, at)) at += 1;
  return text.slice(from, at);
}

/** Full-width digits as ASCII. */
function plain(digits: string): string {
  return digits.normalize('NFKC');
}
