import {
  type Food,
  type Kitchen,
  nameIn,
  type Pack,
  plural,
  type Stated,
  writeNumber,
  writeStated,
} from '@retare/core';

/** `` `a` or `b` `` */
export function quoted(words: readonly string[]): string {
  const marked = words.map((word) => `\`${word}\``);
  return marked.length < 2 ? marked.join('') : `${marked.slice(0, -1).join(', ')} or ${marked.at(-1)}`;
}

/** The amounts that would do, written as the kitchen writes them, each once. */
export function writtenFor(kitchen: Kitchen, amounts: readonly Stated[]): string[] {
  return [...new Set(amounts.map((amount) => writeStated(amount, kitchen)))].filter((text) => text !== '');
}

/** `butter beans`, as that kitchen calls them. */
export function foodName(food: Food, kitchen: Kitchen): string {
  return nameIn(food, kitchen.id).many;
}

/** `400 g tins`, `8 and 16 fl oz cartons` */
export function packWords(packs: readonly Pack[]): string {
  const sizes = packs.map(
    (pack) => `${writeNumber(pack.size, pack.unit)} ${pack.unit === 'floz' ? 'fl oz' : pack.unit}`,
  );
  const words = [...new Set(packs.map((pack) => plural(pack.word)))].join(' and ');
  const list = sizes.length < 2 ? sizes.join('') : `${sizes.slice(0, -1).join(', ')} and ${sizes.at(-1)}`;
  return `${list} ${words}`;
}

/** `a 400 g tin` */
export function onePack(pack: Pack): string {
  const unit = pack.unit === 'floz' ? 'fl oz' : pack.unit;
  return `a ${writeNumber(pack.size, pack.unit)} ${unit} ${pack.word}`;
}

/** `Write … or …`, or nothing where nothing is known that would do. */
export function writeInstead(expected: readonly string[], otherwise: string): string {
  return expected.length === 0 ? otherwise : `Write ${quoted(expected)}`;
}

/** `a` or `an` before a kitchen's adjective. */
export function article(word: string): string {
  return /^[AEIO]/.test(word) ? 'an' : 'a';
}
