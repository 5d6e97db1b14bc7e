import type { Exact } from '../../exact.js';
import { readQuantity } from '../quantity/quantity.js';
import type { Span } from '../reading.js';
import { centimetresIn, isLengthUnit, isMassUnit, isVolumeUnit } from '../size.js';
import { isInnerHyphen } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import type { LengthUnit, MassUnit, VolumeUnit } from '../unit.js';
import { readSizeAt } from './read-size.js';

interface Numbered {
  low: Exact;
  high: Exact | null;
  span: Span;
  /** Words for about stand with it. */
  approx: boolean;
}

/** A quantity in the words for what a dish makes. */
export type YieldPart =
  /** Servings or pieces; `whole` where they are things of which a dish makes one, larger or smaller, and never a part. */
  | ({ kind: 'count'; whole: boolean } & Numbered)
  /** What the whole dish comes to, `about 3 cups`, or what each piece of it does, `2 lb` of a `2 lb loaf`. */
  | ({ kind: 'total' | 'each'; unit: MassUnit | VolumeUnit; whole: boolean } & Numbered)
  /** A length of the pieces, or two sides of the whole. */
  | ({ kind: 'size'; sides: Exact[]; unit: LengthUnit; whole: boolean } & Numbered);

/** Things of which a dish makes one. */
const wholes = new Set(
  `loaf loaves cake cakes pie pies tart tarts pudding puddings traybake traybakes bake bakes casserole casseroles terrine terrines batch batches
  flan flans quiche quiches pizza pizzas roulade roulades sponge sponges cheesecake cheesecakes pavlova pavlovas trifle trifles meatloaf meatloaves
  galette galettes crumble crumbles cobbler cobblers frittata frittatas focaccia focaccias gratin gratins`.split(/\s+/),
);
const times = new Set(
  `second seconds sec secs minute minutes min mins hour hours hr hrs day days week weeks month months`.split(' '),
);
const eachWords = new Set(['each', 'apiece', 'per']);
/** What is said behind these is of something else than the number before them. */
const stops = new Set(['of', 'with', 'and', 'or', 'for', 'to', 'from', 'in', ',', ';', '.', ')', '—', '–']);
/** More words than these stand between a number and its noun in no yield. */
const furthest = 8;

/**
 * Reads what a dish makes: `4 servings`, `about 3 cups`, `one 9-inch pie`, `24 2-inch cookies`, `8 bowls (500 ml each)`.
 *
 * @returns In the order of the text. What is a time, or a number of something hyphened, is left out.
 */
export function readYield(text: string): YieldPart[] {
  const tokens = tokenize(text);
  const parts: YieldPart[] = [];
  let at = 0;
  let counted = -1;
  while (at < tokens.length) {
    const read = readSides(tokens, at, counted >= 0) ?? readOne(tokens, at, { counted, anyCount: counted >= 0 });
    if (read === null) {
      at += 1;
      continue;
    }
    if (read.part !== null) parts.push(read.part);
    if (read.part?.kind === 'count' || read.isArticle) counted = read.next;
    at = read.next;
  }
  return parts;
}

interface Found {
  part: YieldPart | null;
  next: number;
  isArticle?: boolean;
}

/** `9 × 13-inch`; `12 x 100 g` are twelve. */
function readSides(tokens: Tokens, at: number, anyCount: boolean): Found | null {
  const size = tokens.at(at).kind === 'number' ? readSizeAt(tokens, at) : null;
  const sides = size?.measures.map(({ low }) => low) ?? [];
  const [first] = sides;
  if (size === null || first === undefined || sides.length < 2 || !isLengthUnit(size.unit)) return null;
  const { unit, next } = size;
  if (!anyCount && arePieces(tokens, at, sides, { unit, next })) {
    const count: Numbered = { low: first, high: null, approx: false, span: tokens.span(at, at + 1) };
    return { part: { kind: 'count', whole: false, ...count }, next: at + 2 };
  }
  const part: YieldPart = {
    kind: 'size',
    sides,
    unit,
    whole: isWhole(tokens, next),
    ...{ low: first, high: null, approx: false, span: tokens.span(at, next) },
  };
  return { part, next };
}

/** No piece that a dish makes many of is longer, in centimetres. Common practice, no source. */
const longestPiece = 15;

/** `24 × 5 cm squares` are 24 of 5 cm: the words behind count pieces, and say of no number before them how many. */
function arePieces(
  tokens: Tokens,
  at: number,
  [count, length, ...more]: readonly Exact[],
  { unit, next }: { unit: LengthUnit; next: number },
): boolean {
  if (count === undefined || length === undefined || more.length > 0) return false;
  const sign = tokens.word(at + 1);
  if ((sign !== 'x' && sign !== '×') || !count.isInteger() || count.equals(length)) return false;
  if (length.times(centimetresIn(unit)).greaterThan(longestPiece) || isWhole(tokens, next)) return false;
  const noun = tokens.at(next);
  return noun.kind === 'word' && noun.lower.endsWith('s');
}

function readOne(
  tokens: Tokens,
  at: number,
  { counted, anyCount }: { counted: number; anyCount: boolean },
): Found | null {
  const read = readQuantity(tokens, at);
  if (read === null || read.bare || read.range?.reversed === true) return null;
  const { low, high, unit, next, first, approx } = read;
  // `a 9-inch cake`: an article alone is no number that could be another.
  if (read.article && unit === null) return { part: null, next, isArticle: true };
  if (times.has(tokens.word(next)) || (unit === null && isHyphened(tokens, next))) return { part: null, next };
  const numbered: Numbered = { low, high, approx, span: tokens.span(first, next) };
  const behindCount = isBehind(tokens, at, counted);
  const whole = isWhole(tokens, next);
  if (unit !== null && isLengthUnit(unit))
    return { part: { kind: 'size', sides: [low], unit, whole, ...numbered }, next };
  if (unit !== null && (isMassUnit(unit) || isVolumeUnit(unit))) {
    const isEach = whole || behindCount || isEachSaid(tokens, at, next, anyCount);
    return { part: { kind: isEach ? 'each' : 'total', unit, whole, ...numbered }, next };
  }
  // The unit of a count (`2 loaves`) stays as it is written.
  const [numberNext, isCrossed] = numberEnd(tokens, read.range?.next ?? next);
  const count = { ...numbered, span: tokens.span(first, numberNext) };
  return {
    part: { kind: 'count', whole: isWhole(tokens, numberNext), ...count },
    next: isCrossed ? numberNext + 1 : numberNext,
  };
}

/** The `×` of `12 × 100 g` is no part of the number. */
function numberEnd(tokens: Tokens, next: number): [next: number, isCrossed: boolean] {
  const sign = tokens.word(next);
  return [next, sign === 'x' || sign === '×'];
}

/** Right behind a number of pieces, in brackets or not: `3 (8-oz) jars`. */
function isBehind(tokens: Tokens, at: number, counted: number): boolean {
  return counted === at || (counted === at - 1 && tokens.word(counted) === '(');
}

/** `of 300 ml`, `500 ml each`, `1 cup per person`. */
function isEachSaid(tokens: Tokens, at: number, next: number, anyCount: boolean): boolean {
  if (!anyCount) return false;
  const before = tokens.word(at - 1);
  return before === 'of' || eachWords.has(before) || eachWords.has(tokens.word(next));
}

/** `12-hole`: a number hyphened to a word is part of it. */
function isHyphened(tokens: Tokens, next: number): boolean {
  // A dash in `serves 4—or two` is none.
  return tokens.word(next) === '-' && isInnerHyphen(tokens, next);
}

/** Where the first of the things of which a dish makes one ends, from an offset of the text; null where it names none. */
export function wholeBehind(text: string, from: number): number | null {
  return tokenize(text).list.find(({ lower, start }) => start >= from && wholes.has(lower))?.end ?? null;
}

/** Whether the noun behind a number is one of the wholes; sizes and brackets between them are passed. */
function isWhole(tokens: Tokens, next: number): boolean {
  const stop = Math.min(tokens.length, next + furthest);
  for (let at = next; at < stop; at += 1) {
    const partner = tokens.partner[at] ?? -1;
    if (partner > at && at === next) at = partner;
    else if (wholes.has(tokens.word(at))) return true;
    else if (stops.has(tokens.word(at)) || tokens.word(at) === '(') return false;
  }
  return false;
}
