import { isMeasured, readStatement, type Statement } from '../quantity/statement.js';
import { isLengthUnit, type KitchenUnits } from '../size.js';
import { isDash } from '../token/dash.js';
import type { Tokens } from '../token/token.js';
import { type LineAmount, readLineAmount } from './line-amount.js';
import { readClause, type SecondStatement, type SecondStatementContext, stateAgain } from './restated-clause.js';
import { passSameFood, singular } from './same-food.js';

/** Reads every statement of the same quantity behind an amount, in the order of the text. */
export function readSecondStatements(
  tokens: Tokens,
  head: LineAmount,
  context: SecondStatementContext,
): SecondStatement[] {
  return context.place === 'direct' ? readDirect(tokens, head, context) : readBehind(tokens, head, context);
}

/** `10oz (300g)`, `1 cup/240 ml`, `800g | 1 1/2 lb`, `14 ounces or 400 grams of` */
function readDirect(tokens: Tokens, head: LineAmount, context: SecondStatementContext): SecondStatement[] {
  const found: SecondStatement[] = [];
  let at = head.next;
  for (;;) {
    const second =
      readOtherPacks(tokens, at, head, context.kitchen) ??
      readBracket(tokens, at, head, { ...context, foods: [] }) ??
      readJoined(tokens, at, head, context.kitchen);
    if (second === null) return found;
    found.push(...second);
    at = second.at(-1)?.next ?? tokens.length;
  }
}

const closeJoints = new Set(['/', '|', 'or', '=']);

function readJoined(tokens: Tokens, at: number, head: LineAmount, kitchen: KitchenUnits): SecondStatement[] | null {
  const joint = tokens.word(at);
  const close = closeJoints.has(joint);
  if (!close && !isDash(joint) && joint !== ',') return null;
  if (head.statement.quantity.unitWord === null && head.pack === null) return null;
  const statement = readStatement(tokens, at + 1, kitchen);
  if (statement === null || !isMeasured(statement.unit) || statement.unit === head.unit || isUnsure(statement))
    return null;
  if (!isMeasured(head.unit) && (joint === ',' || head.pack !== null)) return null;
  if (tokens.word(statement.next) === 'each' || isLengthUnit(statement.unit) !== isLengthUnit(head.unit)) return null;
  const about = close && isAboutWord(tokens, head.start, head.first);
  const next =
    tokens.word(statement.next) === 'of' && !tokens.at(statement.next).marked ? statement.next + 1 : statement.next;
  return [stateAgain(statement, { start: at, next, about })];
}

/** `or 2 (14.5-oz) cans`, in a bracket or not, `(one 8-oz can)`: other packs that hold as much, of which nothing is converted. */
function readOtherPacks(tokens: Tokens, at: number, head: LineAmount, kitchen: KitchenUnits): SecondStatement[] | null {
  const close = tokens.word(at) === '(' ? (tokens.partner[at] ?? -1) : -1;
  const inside = close > at ? at + 1 : at;
  const sign = tokens.word(inside);
  const isOr = (sign === 'or' || sign === '/') && head.pack !== null && head.pack.word !== '';
  const isAgain = close > at && isMeasured(head.unit);
  if (!isOr && !isAgain) return null;
  const other = readLineAmount(tokens, isOr ? inside + 1 : inside, kitchen);
  if (other === null || other.pack === null || other.pack.word === '' || other.statement.quantity.bare) return null;
  if (close > at && other.next !== close) return null;
  const { low, high, unit, approx, first } = other;
  const next = close > at ? close + 1 : other.next;
  return [{ low, high, unit, approx, start: at, next, first, quantityNext: other.next, word: '', other: true }];
}

function isUnsure({ quantity }: Statement): boolean {
  return quantity.bare || quantity.article || quantity.range?.reversed === true;
}

/** A word for about covers what is joined to its number; a sign covers its own number only. */
function isAboutWord(tokens: Tokens, start: number, first: number): boolean {
  return start < first && tokens.at(start).kind === 'word';
}

/** Statements in a bracket at an index: `(300g)`, `(32 oz, 946mL)`, `(about 1 medium avocado)`, `(6 oz each)`. */
function readBracket(
  tokens: Tokens,
  open: number,
  head: LineAmount,
  context: SecondStatementContext,
): SecondStatement[] | null {
  const close = tokens.partner[open] ?? -1;
  if (close <= open) return null;
  const found: SecondStatement[] = [];
  let at = open + 1;
  let about = false;
  while (at < close) {
    const clause = readClause(tokens, at, close, { head, context, kind: 'bracket' });
    if (clause === null) break;
    const approx = clause.second.approx || about;
    found.push({ ...clause.second, approx });
    about = about || isAboutWord(tokens, clause.statement.start, clause.statement.first);
    at = clause.next;
    const sign = tokens.word(at);
    about = about && closeJoints.has(sign);
    if (
      at < close &&
      (sign === ',' || sign === '/' || sign === '|' || sign === 'or' || sign === ';' || sign === '=' || isDash(sign))
    )
      at += 1;
    else break;
  }
  const [last, first] = [found.at(-1), found[0]];
  if (last === undefined || first === undefined) return null;
  return withBracket(found, { open, close, rest: at });
}

/** The bracket falls away with the statements in it, unless other words are left. */
function withBracket(
  found: SecondStatement[],
  { open, close, rest }: { open: number; close: number; rest: number },
): SecondStatement[] {
  const whole = rest >= close;
  return found.map((second, index) => {
    const start = index === 0 ? (whole ? open : open + 1) : second.start;
    const following = found[index + 1];
    const next = following === undefined ? (whole ? close + 1 : rest) : following.start;
    return { ...second, start, next };
  });
}

/** Brackets and clauses behind the food, up to the end of the sentence. */
function readBehind(tokens: Tokens, head: LineAmount, context: SecondStatementContext): SecondStatement[] {
  const found: SecondStatement[] = [];
  let at = context.from ?? head.next;
  while (at < tokens.length) {
    const { lower } = tokens.at(at);
    const close = tokens.partner[at] ?? -1;
    if (lower === '.' && tokens.at(at + 1).gap && at + 1 < tokens.length) break;
    // What is added is another amount, and so is what stands behind it.
    if ((lower === 'plus' || lower === '+') && tokens.at(at + 1).kind === 'number') break;
    const others = readOtherPacksBehind(tokens, at, head, context);
    const seconds =
      others ?? (close > at ? readBracket(tokens, at, head, context) : readOpenClause(tokens, at, head, context));
    if (seconds !== null) found.push(...asPack(seconds, head));
    at = seconds?.at(-1)?.next ?? (close > at ? close + 1 : at + 1);
  }
  return found;
}

/** The same behind the food, where nothing but the food's name goes on: `diced tomatoes or 2 (14.5-oz) cans`. */
function readOtherPacksBehind(
  tokens: Tokens,
  at: number,
  head: LineAmount,
  { kitchen, foods }: SecondStatementContext,
): SecondStatement[] | null {
  const [other] = readOtherPacks(tokens, at, head, kitchen) ?? [];
  if (other === undefined) return null;
  const { next } = passSameFood(tokens, other.next, tokens.length, new Set(foods.map(singular)));
  return next >= tokens.length || tokens.at(next).kind === 'mark' ? [{ ...other, next }] : null;
}

/** A clause behind a comma, or behind words that restate. */
function readOpenClause(
  tokens: Tokens,
  at: number,
  head: LineAmount,
  context: SecondStatementContext,
): SecondStatement[] | null {
  const { lower } = tokens.at(at);
  const comma = lower === ',' || lower === ';' || (isDash(lower) && tokens.at(at).gap);
  const clause = readClause(tokens, comma ? at + 1 : at, tokens.length, {
    head,
    context,
    kind: comma ? 'comma' : 'words',
  });
  return clause === null ? null : [{ ...clause.second, start: at }];
}

/** A size in a bracket behind the food of one container (`1 jar salsa (16 oz)`), or of several tins, is that of each. */
function asPack(seconds: SecondStatement[], head: LineAmount): SecondStatement[] {
  const word = head.statement.quantity.unitWord?.container ?? '';
  const single = head.low.eq(1) && head.high === null;
  if (word === '' || head.pack !== null || !(single || head.unit === 'can' || head.unit === 'tin')) return seconds;
  return seconds.map((second) => {
    if (second.each !== undefined || !isMeasured(second.unit)) return second;
    return { ...second, each: { low: second.low, high: second.high, unit: second.unit }, word };
  });
}
