import type { Food, FoodName } from './food.js';

/** A name of a food that is counted by a part of it: `sheet of gelatin`, `celery rib`. */
export interface CountedName {
  word: FoodName;
  food: string;
}

/** Parts by which foods are counted. */
const parts = new Map<string, string>(
  'leaf/leaves sheet/sheets stick/sticks rib/ribs stalk/stalks rasher/rashers strip/strips slice/slices head/heads bulb/bulbs ear/ears cob/cobs clove/cloves sprig/sprigs ball/balls fillet/fillets'
    .split(' ')
    .flatMap((pair): [string, string][] => {
      const [one = '', many = ''] = pair.split('/');
      return [
        [one, one],
        [many, one],
      ];
    }),
);

/** The part that a word names, in the singular; null for any other word. */
export function partNamed(word: string): string | null {
  return parts.get(word.toLowerCase()) ?? null;
}

/** How a kitchen counts a food by its parts: its own words first. */
export function countedNames(food: Food, kitchen: string): CountedName[] {
  return [...(food.names[kitchen] ?? []), ...(food.names.any ?? [])].flatMap((name) => counted(name) ?? []);
}

function counted({ one, many }: FoodName): CountedName | null {
  const [words, others] = [one.split(' '), many.split(' ')];
  const [first, last] = [words[0] ?? '', words.at(-1) ?? ''];
  if (words.length > 2 && words[1] === 'of' && parts.get(first) === first)
    return { word: { one: first, many: others[0] ?? first }, food: words.slice(2).join(' ') };
  if (words.length > 1 && parts.get(last) === last)
    return { word: { one: last, many: others.at(-1) ?? last }, food: words.slice(0, -1).join(' ') };
  return null;
}
