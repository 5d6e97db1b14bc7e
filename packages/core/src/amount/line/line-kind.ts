import type { Tokens } from '../token/token.js';
import { imperatives, kit, objects, sentimentWords, stepMarkers, stepOpeners } from './line-words.js';

/**
 * Whether a list line is no ingredient at all: a label for the lines below it, a step or tip, a piece of kit, a joke.
 *
 * @param from Index of the first word behind a task box or list sign.
 * @param hasAmount Whether the line states an amount: then only kit and steps are left out.
 * @param food The name read, as token indexes.
 * @param container Container word of the amount, or empty.
 */
export function isNotAnIngredient(
  tokens: Tokens,
  from: number,
  { hasAmount, food, container }: { hasAmount: boolean; food: readonly number[]; container: string },
): boolean {
  if (tokens.length <= from) return true;
  if (!hasAmount && isLabel(tokens, from)) return true;
  return (
    isEquipment(tokens, from) ||
    isStep(tokens, from) ||
    isKit(tokens, food, container) ||
    (!hasAmount && isJoke(tokens, from, food))
  );
}

function isLabel(tokens: Tokens, from: number): boolean {
  const last = tokens.word(tokens.length - 1);
  if (last === ':') return true;
  if (tokens.word(from) === 'for' && (tokens.word(from + 1) === 'the' || tokens.word(from + 1) === 'a')) return true;
  const first = tokens.word(from) === '(' ? from + 1 : from;
  return tokens.word(first) === 'the' && tokens.word(first + 1) === 'following';
}

const equipment = new Set(['equipment', 'tools', 'tool', 'utensils']);

/** `Special equipment: a 9-inch springform pan` */
function isEquipment(tokens: Tokens, from: number): boolean {
  const longestLabel = 4;
  for (let at = from; at < from + longestLabel; at += 1)
    if (equipment.has(tokens.word(at)) && tokens.word(at + 1) === ':') return true;
  return false;
}

/** A verb of the kitchen with what is done to it: `Cut the pork`, `Line a pan`; but `Squeeze of lime`, `Roast beef`, `Add-ins`. */
function isStep(tokens: Tokens, from: number): boolean {
  const first = tokens.word(from);
  const behind = tokens.at(from + 1);
  if (stepOpeners.has(first)) return behind.lower !== 'of' && behind.lower !== '-';
  if (!imperatives.has(first)) return false;
  if (objects.has(behind.lower)) return true;
  const sight = 14;
  const words = tokens.list.slice(from + 1, from + sight);
  return behind.kind === 'word' && behind.lower !== 'of' && words.some(({ lower }) => stepMarkers.has(lower));
}

/** Food that is called after a tool: `tea bags`. */
const foodsLikeKit = new Set([
  'tea',
  'bread',
  'tortilla',
  'taco',
  'rice',
  'bouquet',
  'hot',
  'chicken',
  'cheese',
  'crock',
  'wafer',
]);

/** A line whose name ends in a tool, or that has a container and no food: `5l (1 gallon) jar`. */
function isKit(tokens: Tokens, food: readonly number[], container: string): boolean {
  if (food.length === 0) return kit.has(container);
  return kit.has(tokens.word(food.at(-1) ?? -1)) && !foodsLikeKit.has(tokens.word(food.at(-2) ?? -1));
}

function isJoke(tokens: Tokens, from: number, food: readonly number[]): boolean {
  // `A lot of love.`
  const end = tokens.length - (tokens.word(tokens.length - 1) === '.' ? 1 : 0);
  if (food.length === 1 && food[0] === end - 1 && sentimentWords.has(tokens.word(food[0]))) return true;
  const smile = tokens.list
    .slice(-3)
    .some(({ lower }, place, all) => (lower === ';' || lower === ':') && all[place + 1]?.lower === ')');
  const alone = tokens.length - from <= 3;
  return sentimentWords.has(tokens.word(from)) && (alone || smile);
}
