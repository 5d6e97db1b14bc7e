import { addUp, inTablespoons, type Measure } from '../quantity/add-up.js';
import { isMeasured } from '../quantity/statement.js';
import type { Quantity } from '../reading.js';
import { isLengthUnit, type KitchenUnits } from '../size.js';
import type { Tokens } from '../token/token.js';
import { isContainer } from '../unit-kind.js';
import type { LineAmount } from './line-amount.js';
import { readLineAmount } from './line-amount.js';
import type { SecondStatementContext } from './restated-clause.js';
import { passSameFood, singular } from './same-food.js';
import { readSecondStatements } from './second-statement.js';

/** An amount that is added to the one before it, with its own second statements. */
export interface AddedAmount {
  amount: LineAmount;
  quantities: Omit<Quantity, 'span'>[];
  /** Index behind it, `of` included. */
  next: number;
}

/** Whether a sign or word adds what follows it. */
function addsMore(word: string): boolean {
  return word === 'plus' || word === '+' || word === 'and' || word === '&';
}

/** Whether an amount counts packs of the shop. */
export function countsPacks({ pack, unit }: Pick<LineAmount, 'unit'> & { pack: { word: string } | null }): boolean {
  // A piece of ginger is no pack.
  return (pack !== null && pack.word !== '') || isContainer(unit);
}

/** `plus 2 tbsp (30 g)` at an index; null where what is added is neither measured nor in packs. */
export function readAdded(tokens: Tokens, at: number, context: SecondStatementContext): AddedAmount | null {
  if (!addsMore(tokens.word(at))) return null;
  const amount = readLineAmount(tokens, at + 1, context.kitchen);
  if (amount === null) return null;
  const { quantity } = amount.statement;
  if (quantity.bare || quantity.article || isLengthUnit(amount.unit)) return null;
  if (!isMeasured(amount.unit) && !countsPacks(amount)) return null;
  const seconds = readSecondStatements(tokens, amount, context);
  const behind = seconds.at(-1)?.next ?? amount.next;
  const next = tokens.word(behind) === 'of' && !tokens.at(behind).marked ? behind + 1 : behind;
  return { amount, quantities: [amount, ...seconds.filter(({ each }) => each === undefined)], next };
}

/** The same behind the food, up to the end of its clause: `1 (14-oz) can coconut milk plus ¼ cup`. */
export function readAddedBehind(
  tokens: Tokens,
  from: number,
  context: SecondStatementContext,
): (AddedAmount & { start: number }) | null {
  const at = tokens.word(from) === ',' ? from + 1 : from;
  // `and` goes on with something else there.
  if (tokens.word(at) === 'and' || tokens.word(at) === '&') return null;
  const added = readAdded(tokens, at, context);
  if (added === null) return null;
  const { next } = passSameFood(tokens, added.next, tokens.length, new Set(context.foods.map(singular)));
  const ends = next >= tokens.length || tokens.at(next).kind === 'mark';
  return ends ? { ...added, next, start: from } : null;
}

/**
 * Statements of one amount and of what is added to it, added up pair by pair; a stick of butter in its tablespoons.
 *
 * @returns Each unit once; empty where no two of them measure the same.
 */
export function addUpStatements(
  amounts: readonly Measure[],
  added: readonly Measure[],
  kitchen: KitchenUnits,
): Measure[] {
  const sums = amounts.map(inTablespoons).flatMap((one) => {
    const sum = added.map((other) => addUp(one, other, kitchen)).find((each) => each !== null);
    return sum == null || !isMeasured(sum.unit) ? [] : [sum];
  });
  return sums.filter(({ unit }, at) => sums.findIndex((each) => each.unit === unit) === at);
}
