import { Exact } from '../exact.js';
import { isSlash, vulgarFraction } from './fraction.js';
import { markupMask } from './markup.js';
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
      continue;
    }
    const sign = signAt(text, at);
    if (isBlank(sign)) {
      gap = true;
      at += sign.length;
      continue;
    }
    const token = tokenAt(text, at, list.at(-1), gap);
    list.push({ ...token, gap, marked });
    at = token.end;
    gap = false;
    marked = false;
  }
  return new Tokens(text, list);
}

type Bare = Omit<Token, 'gap' | 'marked'>;

function tokenAt(text: string, at: number, before: Token | undefined, gap: boolean): Bare {
  const sign = signAt(text, at);
  const glued = !gap && before !== undefined;
  const afterSign = glued && currency.has(before.text);
  if (
    digitOf(sign) !== null ||
    (sign === '.' && digitOf(text[at + 1] ?? '') !== null && !(glued && before.kind === 'number'))
  ) {
    return numberAt(text, at, afterSign);
  }
  const fraction = vulgarFraction(sign);
  if (fraction !== null) return numberToken(text, at, at + sign.length, fraction, 'fraction');
  if (isLetter(sign)) return wordToken(text, at, wordEnd(text, at));
  // Folding would make a letter of the sign º.
  return { ...wordToken(text, at, at + sign.length), kind: 'mark', lower: sign };
}

function numberAt(text: string, at: number, afterSign: boolean): Bare {
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
    return numberToken(text, at, end + joint.length, new Exact(whole).plus(fraction), 'mixed');
  }
  if (afterSign || whole.length > mostDigits || oddWhole(text, end, whole))
    return wordToken(text, at, wordEnd(text, end));
  return numberToken(text, at, end, new Exact(whole), 'whole');
}

/** `00` flour, `2%`, `1:1`, `7up`, `2nd`: digits that are no quantity. */
function oddWhole(text: string, end: number, whole: string): boolean {
  if (whole.length > 1 && whole.startsWith('0')) return true;
  if (text[end] === ':' && digitOf(text[end + 1] ?? '') !== null) return true;
  if (isPercent(text, end)) return true;
  const tail = text.slice(end, end + 3).toLowerCase();
  const ordinal = tail.slice(0, 2);
  const known = ordinal === 'st' || ordinal === 'nd' || ordinal === 'rd' || ordinal === 'th' || ordinal === 'up';
  return known && !isLetter(tail[2] ?? '');
}

function isPercent(text: string, end: number): boolean {
  return text[end] === '%' || (isBlank(text[end] ?? '') && text[end + 1] === '%');
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
): Bare {
  const more = (text[end] === '.' || text[end] === ',') && digitOf(text[end + 1] ?? '') !== null;
  const long = whole.length + behind.length > mostDigits;
  if (afterSign || more || long || isPercent(text, end)) return wordToken(text, at, wordEnd(text, end));
  const grouped = joint === ',' && behind.length === 3 && whole.length <= 3 && whole !== '' && !whole.startsWith('0');
  const digits = plain(grouped ? `${whole}${behind}` : `${whole === '' ? '0' : whole}.${behind}`);
  const token = numberToken(text, at, end, new Exact(digits), grouped ? 'whole' : 'decimal');
  if (behind.length !== 3 || whole === '' || whole.startsWith('0')) return token;
  return { ...token, triple: joint === ',' ? 'comma' : 'point' };
}

function slashed(text: string, at: number, end: number, { whole, behind, afterSign }: Parts): Bare {
  const short = whole.length <= 3 && behind.length <= 3;
  const more = isSlash(text[end] ?? '') && digitOf(text[end + 1] ?? '') !== null;
  const [above, below] = [Number(plain(whole)), Number(plain(behind))];
  if (afterSign || !short || more || below === 0 || above >= below || above === 0 || isPercent(text, end)) {
    return wordToken(text, at, wordEnd(text, end));
  }
  return numberToken(text, at, end, new Exact(above).div(below), 'fraction');
}

function numberToken(text: string, start: number, end: number, value: Exact, form: NumberForm): Bare {
  return { ...wordToken(text, start, end), kind: 'number', value, form };
}

function wordToken(text: string, start: number, end: number): Bare {
  const written = text.slice(start, end);
  const lower = written.normalize('NFKC').toLowerCase().replaceAll('’', "'");
  return { kind: 'word', text: written, lower, start, end, value: null, form: null, triple: null };
}

/** Letters, and digits that follow letters (`T45`), but `x` before a digit is the sign of `9x13`. */
function wordEnd(text: string, from: number): number {
  let at = from;
  while (at < text.length) {
    const sign = signAt(text, at);
    const apostrophe = sign === "'" || sign === '’';
    if (apostrophe && at > from && isLetter(signAt(text, at + 1))) at += 1;
    else if (isLetter(sign) || (digitOf(sign) !== null && !isCross(text, from, at))) at += sign.length;
    else break;
  }
  return at;
}

function isCross(text: string, from: number, at: number): boolean {
  return at === from + 1 && (text[from] === 'x' || text[from] === 'X');
}

function digitsFrom(text: string, from: number): string {
  let at = from;
  while (at < text.length && digitOf(text[at] ?? '') !== null) at += 1;
  return text.slice(from, at);
}

/** ASCII and full-width digits as ASCII; anything else is no digit. */
function digitOf(sign: string): string | null {
  if (sign >= '0' && sign <= '9' && sign.length === 1) return sign;
  if (sign >= '\uff10' && sign <= '\uff19' && sign.length === 1) return String(sign.charCodeAt(0) - 0xff10);
  return null;
}

function plain(digits: string): string {
  return digits.normalize('NFKC');
}

function signAt(text: string, at: number): string {
  const code = text.codePointAt(at);
  return code === undefined ? '' : String.fromCodePoint(code);
}

function isBlank(sign: string): boolean {
  return sign !== '' && /^[\s\u200b\u2060\ufeff]$/u.test(sign);
}

function isLetter(sign: string): boolean {
  // º and ª are letters to Unicode; º stands for the degree sign.
  return sign !== '' && sign !== 'º' && sign !== 'ª' && /^[\p{L}\p{M}]$/u.test(sign);
}
