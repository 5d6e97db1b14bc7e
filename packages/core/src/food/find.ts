import type { Food } from './food.js';

/** Foods by their id, as a larder holds them. */
export type Foods = ReadonlyMap<string, Food>;

interface Entry {
  food: Food;
  /** Kitchen whose name it is; `any` for one understood everywhere. */
  kitchen: string;
}

/** Words that say how a food looks, keeps or was handled, and never make another food of it. */
const plainWords: ReadonlySet<string> = new Set(
  `fresh freshly large small medium big extra jumbo baby young ripe raw good quality best organic plain regular ordinary
  boneless skinless bone in skin on lean whole hulled shelled peeled pitted trimmed chopped diced sliced minced crushed grated
  shredded ground-up thick thin thinly finely coarsely roughly hot cold warm cool room temperature softened melted unsweetened
  sweet-cream yukon gold russet waxy floury english persian curly flat leaf leaves leaf-parsley stalks stalk florets fillet
  fillets loin steaks pieces piece cubes chunks wedges halves heads head cloves clove sprigs sprig bulb bulbs ears ear
  of the a an some very new crisp firm cooked uncooked free range wild pasture raised sustainably low sodium salt-reduced unsalted
  reduced drained rinsed`.split(/\s+/),
);

const indexes = new WeakMap<Foods, Map<string, Entry[]>>();

/** A food, and the stretch of the words that names it. */
export interface FoundFood {
  food: Food;
  start: number;
  end: number;
}

/**
 * The larder entry that a line's words mean, in the language of a kitchen.
 *
 * The whole phrase is looked up first. Only words that never change a food are then left out one by one from either end, so that
 * `butter beans` is never butter and `coconut milk` never milk.
 *
 * @param words A food as written: `fresh cilantro`, `All-Purpose Flour`.
 * @param foods The larder's foods.
 * @param kitchen Kitchen id of the writer: `cornflour` is another food in a UK kitchen than in a US one.
 * @returns The food with its place in the words, or null: an unknown food is better than a wrong one.
 */
export function findFoodIn(words: string, foods: Foods, kitchen: string): FoundFood | null {
  const index = indexOf(foods);
  let phrase = [...words.matchAll(/[\p{L}\p{N}\p{M}%'’]+/gu)].map((match) => ({
    text: normalise(match[0]),
    start: match.index,
    end: match.index + match[0].length,
  }));
  while (phrase.length > 0) {
    const texts = phrase.map(({ text }) => text);
    const food = pick(index.get(texts.join(' ')), kitchen) ?? pick(index.get(singular(texts)), kitchen);
    const first = phrase[0];
    const last = phrase.at(-1);
    if (first === undefined || last === undefined) return null;
    if (food !== null) return { food, start: first.start, end: last.end };
    if (plainWords.has(first.text)) phrase = phrase.slice(1);
    else if (plainWords.has(last.text)) phrase = phrase.slice(0, -1);
    else return null;
  }
  return null;
}

/** The larder entry that words mean, as `findFoodIn`, without its place. */
export function findFood(words: string, foods: Foods, kitchen: string): Food | null {
  return findFoodIn(words, foods, kitchen)?.food ?? null;
}

function indexOf(foods: Foods): Map<string, Entry[]> {
  const known = indexes.get(foods);
  if (known !== undefined) return known;
  const index = new Map<string, Entry[]>();
  for (const food of foods.values()) {
    for (const [kitchen, names] of Object.entries(food.names)) {
      for (const name of names) {
        for (const key of new Set([
          normalise(name.one),
          normalise(name.many),
          singular(normalise(name.one).split(' ')),
        ])) {
          const entries = index.get(key) ?? [];
          entries.push({ food, kitchen });
          index.set(key, entries);
        }
      }
    }
    const idKey = normalise(food.id);
    if (!index.has(idKey)) index.set(idKey, [{ food, kitchen: 'any' }]);
  }
  indexes.set(foods, index);
  return index;
}

/** The kitchen's own name first, then one understood everywhere, then another kitchen's if only one food has it. */
function pick(entries: readonly Entry[] | undefined, kitchen: string): Food | null {
  if (entries === undefined) return null;
  const own = entries.find((entry) => entry.kitchen === kitchen) ?? entries.find((entry) => entry.kitchen === 'any');
  if (own !== undefined) return own.food;
  const foods = new Set(entries.map((entry) => entry.food));
  return foods.size === 1 ? (entries[0]?.food ?? null) : null;
}

function normalise(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}%]+/gu, ' ')
    .trim();
}

function singular(phrase: readonly string[]): string {
  const last = phrase.at(-1) ?? '';
  return [...phrase.slice(0, -1), singularWord(last)].join(' ');
}

function singularWord(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:oes|ches|shes|xes|sses)$/.test(word)) return word.slice(0, -2);
  if (word.length > 3 && word.endsWith('s') && !word.endsWith('ss')) return word.slice(0, -1);
  return word;
}
