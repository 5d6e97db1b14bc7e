import {
  type Food,
  type Kitchen,
  listed,
  nameIn,
  oneOf,
  type Pack,
  plural,
  type Stated,
  withArticle,
  writeLabel,
  writeStated,
} from '@retare/core';

/** The amounts that would do, written as the kitchen writes them, each once. */
export function writtenFor(kitchen: Kitchen, amounts: readonly Stated[]): string[] {
  return [...new Set(amounts.map((amount) => writeStated(amount, kitchen)))].filter((text) => text !== '');
}

/** `butter beans`, as that kitchen calls them. */
export function foodName(food: Food, kitchen: Kitchen): string {
  return nameIn(food, kitchen.id).many;
}

/** `400 g tins`, `8 and 16 fl oz cartons`, `boxes of 6 and 12` */
export function packWords(packs: readonly Pack[]): string {
  const byWord = new Map<string, Pack[]>();
  for (const pack of packs) {
    const key = `${pack.word} ${pack.unit === 'count'}`;
    byWord.set(key, [...(byWord.get(key) ?? []), pack]);
  }
  return listed(
    [...byWord.values()].map((alike) => sizesOf(alike)),
    'and',
  );
}

/** Packs of one word, all counted or none. */
function sizesOf(packs: readonly Pack[]): string {
  const word = plural(packs[0]?.word || 'pack');
  const sizes = listed(packs.map(writeLabel), 'and');
  return packs[0]?.unit === 'count' ? `${word} of ${sizes}` : `${sizes} ${word}`;
}

/** `a 400 g tin`, `an 8 oz pack`, `a box of 6` */
export function onePack(pack: Pack): string {
  const word = pack.word || 'pack';
  const size = writeLabel(pack);
  if (pack.unit === 'count') return `a ${word} of ${size}`;
  return `${/^(8|11|18)(\D|$)/.test(size) ? 'an' : 'a'} ${size} ${word}`;
}

/** `Write … or …`, or nothing where nothing is known that would do. */
export function writeInstead(expected: readonly string[], otherwise: string): string {
  return expected.length === 0 ? otherwise : `Write ${oneOf(expected)}`;
}

/** `A UK`, `An Australian or EU` */
export function aKitchen(kitchen: Kitchen, start: 'start' | 'middle'): string {
  const words = withArticle(kitchen);
  return start === 'start' ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}
