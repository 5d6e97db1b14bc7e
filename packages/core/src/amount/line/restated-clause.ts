import type { Exact } from '../../exact.js';
import { inSmallerUnit } from '../quantity/add-up.js';
import { isMeasured, readStatement, type Statement } from '../quantity/statement.js';
import { readUnit } from '../quantity/unit-reading.js';
import type { Quantity } from '../reading.js';
import { isLengthUnit, type KitchenUnits } from '../size.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import type { LineAmount } from './line-amount.js';
import { eachWords, gestures, notCounted, proportions, restating } from './line-words.js';
import { passSameFood, type SameFood, singular } from './same-food.js';

/** The amount stated again, or the size of each thing counted. */
export interface SecondStatement {
  low: Exact;
  high: Exact | null;
  unit: UnitId;
  approx: boolean;
  /** Token indexes of the whole stretch that falls away with it, and of number and unit. */
  start: number;
  next: number;
  first: number;
  quantityNext: number;
  /** Set when it is the size of each, not the amount again. */
  each?: { low: Exact; high: Exact | null; unit: UnitId };
  /** Container word for a size of each. */
  word: string;
  /** Other packs of as much, `or 2 (14.5-oz) cans`: they fall away, and state nothing. */
  other?: true;
}

/** What the reading of second statements rests on. */
export interface SecondStatementContext {
  /** `direct`: right behind the amount. `behind`: in brackets and clauses behind the food. */
  place: 'direct' | 'behind';
  kitchen: KitchenUnits;
  foods: readonly string[];
  taken: (index: number) => boolean;
  from?: number;
  /** Amounts read so far. */
  amounts?: readonly Quantity[];
  /** The amount counts a fruit whose juice or zest is used. */
  part?: boolean;
}

/** The second statement that a statement makes, with the stretch that falls away with it. */
export function stateAgain(
  statement: Statement,
  { start, next, about }: { start: number; next: number; about: boolean },
): SecondStatement {
  const { low, high, unit, first } = statement;
  return {
    low,
    high,
    unit,
    approx: statement.approx || about,
    start,
    next,
    first,
    quantityNext: statement.next,
    word: '',
  };
}

/** A clause that states the amount again. */
export interface Clause {
  second: SecondStatement;
  statement: Statement;
  next: number;
}

/** What a clause is measured against. */
export interface ClauseContext {
  head: LineAmount;
  context: SecondStatementContext;
  kind: 'bracket' | 'comma' | 'words';
}

/** One statement with the words that only name the food again, from an index up to `stop` at most. */
export function readClause(
  tokens: Tokens,
  index: number,
  stop: number,
  { head, context, kind }: ClauseContext,
): Clause | null {
  const lead = passRestating(tokens, index);
  if (kind === 'words' && lead === index) return null;
  const statement = readStatement(tokens, lead, context.kitchen);
  if (statement === null || statement.quantity.bare || statement.next > stop) return null;
  const each = readEach(tokens, statement, head);
  if (each !== null) return { second: { ...each, start: index }, statement, next: each.next };
  if (statement.quantity.range?.reversed === true || isNoQuantity(tokens, statement)) return null;
  const foods = new Set(context.foods.map(singular));
  const same = passWeighedWith(tokens, passSameFood(tokens, statement.next, stop, foods));
  if (!endsClause(tokens, same.next, stop)) return null;
  const worded = same.next > statement.next;
  const isOr = tokens.word(lead - 1) === 'or' && lead > index;
  if (!isCredible(tokens, statement, { head, context, kind, isOr, worded, named: same.named })) return null;
  return { second: stateAgain(statement, { start: index, next: same.next, about: false }), statement, next: same.next };
}

/** `without their shells`, `in the pod`, `with skin`: what the food was weighed with. */
function passWeighedWith(tokens: Tokens, same: SameFood): SameFood {
  let at = same.next;
  if (tokens.word(at) === 'out' && tokens.word(at + 1) === 'of') at += 2;
  else if (weighedWith.has(tokens.word(at))) at += 1;
  else return same;
  if (wrappingArticles.has(tokens.word(at))) at += 1;
  return wrappings.has(singular(tokens.word(at))) ? { ...same, next: at + 1 } : same;
}

const weighedWith = new Set(['in', 'with', 'without']);
const wrappingArticles = new Set(['the', 'their', 'its']);
const wrappings = new Set(['shell', 'skin', 'peel', 'rind', 'pod', 'stone', 'pit', 'bone', 'husk']);

function passRestating(tokens: Tokens, index: number): number {
  const words = restating.find((phrase) => phrase.every((word, offset) => tokens.word(index + offset) === word));
  return words === undefined ? index : index + words.length;
}

function isNoQuantity(tokens: Tokens, statement: Statement): boolean {
  const behind = tokens.word(statement.next);
  if (statement.quantity.unitWord === null)
    return notCounted.has(behind) || proportions.has(behind) || gestures.has(behind);
  return behind === 'per';
}

function endsClause(tokens: Tokens, at: number, stop: number): boolean {
  if (at >= stop) return true;
  const token = tokens.at(at);
  return token.kind === 'mark' && token.lower !== '%';
}

interface Claim extends ClauseContext {
  isOr: boolean;
  /** Words that name food, part, size or preparation stand behind the statement. */
  worded: boolean;
  named: boolean;
}

/** Whether a statement can be the same quantity again, and not a share, an alternative or the size of a cut. */
function isCredible(tokens: Tokens, statement: Statement, claim: Claim): boolean {
  const { head, context, kind, isOr, worded, named } = claim;
  const { unit, quantity } = statement;
  const measured = isMeasured(unit);
  const units = context.amounts?.map((amount) => amount.unit) ?? [head.unit];
  if (isOr && !(measured && unit !== head.unit && (!worded || (statement.approx && named)))) return false;
  if (isLengthUnit(unit) && (worded || isMeasured(head.unit) || kind === 'words')) return false;
  // `1 loaf bread, cut into 1-inch (2.5 cm) cubes`: the length before it again.
  if (isLengthUnit(unit) && standsBehindLength(tokens, statement.start)) return false;
  // `12 corn tortillas (6-inch)`: the size of each, and no total.
  if (isLengthUnit(unit) && head.unit === 'count' && head.low.gt(1)) return false;
  if (quantity.unitWord === null && !(worded && (named || (head.unit !== 'count' && isSizeBehind(tokens, statement)))))
    return false;
  if (measured && units.includes(unit) && head.pack === null) return false;
  if (quantity.unitWord === null && units.includes('count')) return false;
  if (kind !== 'bracket' && !measured) return false;
  if (kind === 'comma' && quantity.article) return false;
  return isNear(head, statement, context.kitchen);
}

function standsBehindLength(tokens: Tokens, start: number): boolean {
  const before = tokens.word(start - 1) === '(' ? readUnit(tokens, start - 2, { afterNumber: true }) : null;
  return before !== null && isLengthUnit(before.unit) && before.next === start - 1;
}

function isSizeBehind(tokens: Tokens, statement: Statement): boolean {
  const word = tokens.word(statement.next);
  return word === 'small' || word === 'medium' || word === 'large' || word === 'whole';
}

/** Amounts that can be compared must not differ by more than this factor: otherwise one is a share of the other. */
const mostApart = 2.5;

function isNear(head: LineAmount, statement: Statement, kitchen: KitchenUnits): boolean {
  const both = inSmallerUnit(head, statement, kitchen);
  if (both === null || both[0].unit !== both[1].unit || head.pack !== null) return true;
  const [one, other] = [both[0].low.toNumber(), both[1].low.toNumber()];
  return one <= other * mostApart && other <= one * mostApart;
}

/** `(6 oz each)`, `, about 6 oz each`, `(1 ~ 150 g)` */
function readEach(tokens: Tokens, statement: Statement, head: LineAmount): SecondStatement | null {
  if (isMeasured(head.unit) || !isMeasured(statement.unit)) return null;
  const { range } = statement.quantity;
  const tilde = range !== null && range.high !== null && range.low.eq(1) && tokens.word(range.first + 1) === '~';
  const said = eachWords.has(tokens.word(statement.next));
  if (!said && !tilde) return null;
  const behind = said ? statement.next + 1 : statement.next;
  const { next } = passWeighedWith(tokens, { next: behind, named: false });
  const size = tilde ? { low: range.high ?? statement.low, high: null } : { low: statement.low, high: statement.high };
  const word = head.statement.quantity.unitWord?.container ?? '';
  return {
    ...stateAgain(statement, { start: statement.start, next, about: false }),
    each: { ...size, unit: statement.unit },
    word,
  };
}
