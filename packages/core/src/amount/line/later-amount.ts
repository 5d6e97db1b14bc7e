import { Exact } from '../../exact.js';
import { passAbout } from '../quantity/about.js';
import { sizeWords } from '../quantity/adjective-words.js';
import { isMeasured } from '../quantity/statement.js';
import type { Doubt } from '../reading.js';
import { isLengthUnit, type KitchenUnits } from '../size.js';
import { isDash } from '../token/dash.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { doubtAbout } from './doubt.js';
import { type FoodPhrase, readFoodPhrase } from './food-phrase.js';
import { type LineAmount, readLineAmount } from './line-amount.js';
import { blockers, eachWords, gestures, notCounted, proportions } from './line-words.js';
import { passSameFood, singular } from './same-food.js';
import { trailingUnit } from './trailing-unit.js';

/** An amount that stands behind the food. */
export interface LaterAmount {
  amount: LineAmount;
  /** The food as it is to be named now, where the amount changes it. */
  food: FoodPhrase | null;
  /** The unit that stands in the food's name (`Garlic cloves 3`). */
  unit: UnitId | null;
}

interface Context {
  kitchen: KitchenUnits;
  taken: (index: number) => boolean;
  from: number;
  foods: readonly string[];
}

/** Where an amount may stand behind a food. */
type Slot = 'bracket' | 'clause' | 'sentence' | 'words';

/**
 * Finds the amount of a line that begins with its food: `Flour, 500 g`, `Chicken (a pound or two)`, `pasta: 800g`, `Onions 2`.
 *
 * @returns `null` where no amount is this food's; a doubt where something looks like one and is not sure.
 */
export function findLaterAmount(tokens: Tokens, food: FoodPhrase | null, context: Context): LaterAmount | Doubt | null {
  const foods = new Set(context.foods.map(singular));
  let depth = 0;
  for (let at = context.from; at < tokens.length; at += 1) {
    const { lower } = tokens.at(at);
    if ((tokens.partner[at] ?? -1) > at) depth += 1;
    else if ((tokens.partner[at] ?? -1) >= 0) depth -= 1;
    const slot = slotAt(tokens, at, { depth, from: context.from });
    if (slot === null || context.taken(at)) continue;
    const start = slot === 'words' ? at : passExample(tokens, at + 1);
    const amount = readLineAmount(tokens, start, context.kitchen);
    if (amount === null) continue;
    const doubt = slot === 'sentence' ? null : doubtAbout(tokens, start, amount);
    if (doubt !== null && !blockers.has(lower)) return doubt;
    if (doubt === null && isAccepted(tokens, amount, { slot, foods }) && isPlaced(tokens, amount, at, food))
      return named(tokens, food, amount, context);
  }
  return null;
}

function slotAt(tokens: Tokens, at: number, { depth, from }: { depth: number; from: number }): Slot | null {
  const token = tokens.at(at);
  if ((tokens.partner[at] ?? -1) > at) return 'bracket';
  if (token.lower === ',' || token.lower === ':' || token.lower === ';' || token.lower === '|' || token.lower === '=')
    return 'clause';
  if (isDash(token.lower) && token.gap) return 'clause';
  if (token.lower === '.') return tokens.at(at + 1).gap ? 'sentence' : null;
  if (depth > 0 || at <= from) return null;
  const before = tokens.at(at - 1);
  const isWord = before.kind === 'word' || before.lower === ')' || before.lower === ']';
  if (!isWord || blockers.has(before.lower) || notBefore.has(before.lower)) return null;
  // Words for about were tried before, from the first of them.
  if (passAbout(tokens, at - 1) > at - 1) return null;
  if ((token.lower === 'x' || token.lower === '×') && tokens.at(at + 1).kind === 'number') return 'clause';
  const number = readNumber(tokens, passAbout(tokens, at));
  return number !== null && !number.article ? 'words' : null;
}

/** A number behind these names a kind, no amount: `type 00`, `no. 5`. */
const notBefore = new Set([
  'type',
  'no',
  'nr',
  'number',
  'size',
  'grade',
  'omega',
  'vitamin',
  'step',
  'note',
  'recipe',
  'page',
  'the',
  'these',
  'a',
  'one',
]);

const examples: readonly (readonly string[])[] = [
  ['e', '.', 'g', '.'],
  ['e', '.', 'g'],
  ['eg', '.'],
  ['eg'],
  ['i', '.', 'e', '.'],
  ['i', '.', 'e'],
  ['from'],
  ['you', 'need'],
  ['this', 'is'],
  ['maybe'],
];

function passExample(tokens: Tokens, index: number): number {
  const words = examples.find((phrase) => phrase.every((word, offset) => tokens.word(index + offset) === word));
  const at = words === undefined ? index : index + words.length;
  return tokens.word(at) === ',' ? at + 1 : at;
}

const manyPieces = new Set([
  'pieces',
  'cubes',
  'slices',
  'dice',
  'chunks',
  'strips',
  'thick',
  'rounds',
  'long',
  'lengths',
  'sticks',
  'wide',
  'batons',
  'squares',
  'rings',
  'florets',
  'diced',
  'matchsticks',
  'sized',
  'size',
]);
const smallGestures = new Set<UnitId>(['pinch', 'dash', 'handful', 'bunch']);
const makesVerbs = new Set(['makes', 'make', 'serves', 'feeds', 'is', 'will', 'goes', 'should', 'for']);
/** A bare number above this at the end of a line is a type or a year, and no count. */
const highestCount = new Exact(60);

function isAccepted(
  tokens: Tokens,
  amount: LineAmount,
  { slot, foods }: { slot: Slot; foods: ReadonlySet<string> },
): boolean {
  const { quantity } = amount.statement;
  const behind = tokens.at(amount.next);
  const ends = behind.kind === 'mark' && behind.lower !== '%' && behind.lower !== "'";
  if (slot === 'sentence') return quantity.unitWord !== null && !quantity.bare && ends;
  if (quantity.bare) return ends && smallGestures.has(amount.unit) && slot !== 'words';
  if (amount.pack !== null) return true;
  if (quantity.unitWord !== null) return isUnitAccepted(tokens, amount);
  if (notCounted.has(behind.lower) || proportions.has(behind.lower) || gestures.has(behind.lower)) return false;
  if (amount.low.gt(highestCount)) return false;
  const same = passSameFood(tokens, amount.next, tokens.length, foods);
  const closes = tokens.at(same.next).kind === 'mark' && tokens.word(same.next) !== '/';
  if (quantity.article) return same.named && closes && slot === 'bracket';
  if (ends && behind.lower !== '/') return true;
  return (same.named || sizeWords.has(behind.lower) || behind.lower === 'extra') && closes
    ? true
    : behind.lower === 'per' || eachWords.has(behind.lower);
}

/** A length is the food's only right behind its name: further on it is how thick or how long to cut it. */
function isPlaced(tokens: Tokens, amount: LineAmount, at: number, food: FoodPhrase | null): boolean {
  if (!isLengthUnit(amount.unit)) return true;
  let next = food?.next ?? at;
  while ((tokens.partner[next] ?? -1) > next && next < at) next = (tokens.partner[next] ?? next) + 1;
  return at <= next;
}

function isUnitAccepted(tokens: Tokens, amount: LineAmount): boolean {
  const behind = tokens.word(amount.next);
  if (isLengthUnit(amount.unit) && (manyPieces.has(behind) || behind === 'x' || behind === 'by')) return false;
  return isMeasured(amount.unit) || !makesVerbs.has(behind);
}

/** The food under the name that the amount leaves it: `Garlic cloves 3` are cloves of garlic, `Lemon juice (1 lemon)` is a lemon. */
function named(tokens: Tokens, food: FoodPhrase | null, amount: LineAmount, { taken, foods }: Context): LaterAmount {
  if (amount.unit !== 'count' || amount.pack !== null || amount.statement.quantity.unitWord !== null)
    return { amount, food: null, unit: null };
  const juice = foods.some((word) => word === 'juice' || word === 'zest');
  if (juice) return { amount, food: readFoodPhrase(tokens, amount.next, tokens.length, taken), unit: null };
  const unit = food === null ? null : trailingUnit(tokens, food, 'count', '');
  if (unit === null || unit.at + 1 !== amount.start) return { amount, food: null, unit: null };
  return { amount: { ...amount, start: unit.at }, food: unit.food, unit: unit.unit };
}
