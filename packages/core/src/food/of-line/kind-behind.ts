import type { LineReading } from '../../amount/reading.js';
import { dimensionOf } from '../../amount/size.js';
import { type FoundFood, findFoodIn } from '../find/find.js';
import { type Foods, foodNamed, indexOf } from '../find/name-index.js';
import { singularKey } from '../find/name-key.js';
import { nameWords } from '../find/name-words.js';
import { isOfKindNamed, ofKind } from '../find/of-kind.js';
import { isPlain } from '../find/plain-words.js';
import { notMeasured } from '../find/speech.js';
import { isOnlyTinned, isRaw } from '../find/traits.js';
import type { Food } from '../food.js';
import { type Clause, clausesBehind } from './clauses-behind.js';
import { type Kinds, kindsIn } from './kinds-in-clause.js';
import { startOfFood } from './said-of-food.js';

/** Participles of the shop; any other says what the cook does. */
const shopStates = new Set(
  'dried smoked salted unsalted powdered condensed evaporated desiccated granulated sweetened unsweetened cured canned skimmed'.split(
    ' ',
  ),
);

/** What stands further on is a sentence or a list. */
const mostClauses = 6;

/** Parts and forms that stand behind a spice's name: `cumin (seeds)`. */
const parts: ReadonlySet<string> = new Set(
  'seed seeds powder pod pods stick sticks berries bean beans extract paste flakes'.split(' '),
);

/** States that the kind of a food has with it: `minced meat (beef)` is minced beef. */
const states: ReadonlySet<string> = new Set(
  'minced ground frozen dried dry canned tinned cooked smoked pickled powdered'.split(' '),
);

/** What a kind is looked for with. */
interface Behind {
  /** The words of the food's name. */
  name: readonly string[];
  /** The words between the amount and the food's name, and its own. */
  before: readonly string[];
  found: Food | null;
  foods: Foods;
  kitchen: string;
}

/**
 * The kind of a food that is named behind it: `potatoes (waxy)`, `sugar, brown`, `pasta, preferably penne`. Where several would do,
 * and the food as it is named is one of them, or the larder does not have one, that stays.
 *
 * @param found What the words before it mean, if anything.
 */
export function kindBehind(reading: LineReading, found: Food | null, foods: Foods, kitchen: string): FoundFood | null {
  if (reading.food === null) return null;
  const { span } = reading.food;
  const before = wordsOf(reading.text.slice(startOfFood(reading), span.end));
  const behind = { name: wordsOf(reading.food.text), before, found, foods, kitchen };
  const clauses = clausesBehind(reading);
  const open = clauses.filter(({ inBrackets }) => !inBrackets);
  // `flour, sugar, rye` without an amount is a list of foods, as is `syrup, agave, or honey`.
  const isList =
    (reading.amounts.length === 0 && open.length > 1) || open.slice(1).some(({ text }) => /^or\b/i.test(text));
  for (const clause of clauses.slice(0, mostClauses)) {
    const kinds = kindsIn(clause);
    const isAside = clause.inBrackets || kinds.led;
    const isFurther = !isAside && (clause.adjoins || isList);
    const kind = cookedOf(clause, reading, behind) ?? (isFurther ? null : oneOf(kinds, behind, isAside));
    if (kind !== null) return { food: kind, ...reading.food.span };
  }
  return null;
}

/** Words that stand for what is made of several foods. */
const mixtures: ReadonlySet<string> = new Set(
  'marinade filling batter patties mixture garnish topping toppings'.split(' '),
);

/** A name of which the larder knows no word, as in another tongue: `salça (tomato paste)`. */
function isForeign({ name, foods }: Behind): boolean {
  const index = indexOf(foods);
  return name.every((word) => word.length > 2 && !index.knows(word) && !isPlain(word) && !mixtures.has(word));
}

function exactly(words: readonly string[], { foods, kitchen }: Behind): Food | null {
  return foods.get(foodNamed(indexOf(foods), words.join(' '), kitchen) ?? '') ?? null;
}

/** The first of the kinds, if no other of them leaves the food as it is. */
function oneOf({ alternatives, areExamples }: Kinds, behind: Behind, isAside: boolean): Food | null {
  const { found } = behind;
  if (found !== null && areExamples) return null;
  if (found === null && isAside && alternatives.length === 1 && isForeign(behind)) {
    return exactly(alternatives[0] ?? [], behind);
  }
  const meant = alternatives.map((words) => shopKind(words, behind) ?? (isAside ? ofWideKind(words, behind) : null));
  const first = meant.find((kind) => kind !== null) ?? null;
  if (found === null) return meant[0] ?? null;
  const isLeft = meant.some(
    (kind, at) => kind?.id === found.id || (kind === null && !alternatives[at]?.every(isPlain)),
  );
  return isLeft ? null : first;
}

const wordsOf = (text: string): string[] => nameWords(text).map((word) => word.text);

/** `Chopped`, `roasted`: done in the kitchen, so that `tomatoes, chopped` are no tin of chopped tomatoes. */
const isCooksWork = (word: string): boolean => word.length > 4 && word.endsWith('ed') && !shopStates.has(word);

/** A kind as shops sell it. What the cook does is one only in a tin: `1 can tomatoes, crushed`. */
function shopKind(words: readonly string[], behind: Behind): Food | null {
  const kind = kindNamed(words, behind);
  if (kind === null || !words.some(isCooksWork)) return kind;
  const { found } = behind;
  return found !== null && isOnlyTinned(found) && isOnlyTinned(kind) ? kind : null;
}

/** `brown` behind `sugar`; `wholemeal flour` behind `flour`; `breast` behind `chicken`. */
function kindNamed(words: readonly string[], behind: Behind): Food | null {
  const { name, found } = behind;
  const named = (key: readonly string[]): Food | null => exactly(key, behind);
  const head = name.at(-1) ?? '';
  if (singularKey(words.at(-1) ?? '') === singularKey(head)) return named(words);
  const whole = [...words, ...name];
  const kind = named(whole) ?? named([...words, head]) ?? narrowed(whole, behind);
  if (kind !== null || found === null) return kind;
  const part = isRaw(found) || parts.has(words.join(' ')) ? named([...name, ...words]) : null;
  return part !== null && isRaw(part) === isRaw(found) ? part : null;
}

/** `penne` behind `pasta`. */
function narrowed(words: readonly string[], { foods, kitchen }: Behind): Food | null {
  const speech = { foods, index: indexOf(foods), kitchen, measured: notMeasured };
  const found = ofKind(
    words.map((text) => ({ text, start: 0, end: 0, known: true, plain: false, capital: false })),
    speech,
  );
  return found === null ? null : (foods.get(found.id) ?? null);
}

/** `pecans` behind `nuts`. */
function ofWideKind(words: readonly string[], behind: Behind): Food | null {
  const { name, before } = behind;
  // `Mixed vegetables (peas, carrots)` are both.
  if (before.includes('mixed')) return null;
  const state = before.filter((word) => states.has(word));
  const food = exactly([...state, ...words], behind);
  return food !== null && isOfKindNamed(name.at(-1) ?? '', food) ? food : null;
}

/** `2 cups chicken, cooked and shredded`: measured as it comes from the stove. By weight only where nothing else is done to it. */
function cookedOf({ text }: Clause, { amounts }: LineReading, { name, found, foods, kitchen }: Behind): Food | null {
  const words = wordsOf(text);
  if (words[0] !== 'cooked' || found?.role !== 'bulk' || !isRaw(found)) return null;
  const unit = amounts[0]?.unit;
  const dimension = unit === undefined ? 'mass' : dimensionOf(unit);
  if (dimension !== 'volume' && (dimension !== 'mass' || words.length > 1)) return null;
  return findFoodIn(`cooked ${name.join(' ')}`, foods, kitchen)?.food ?? null;
}
