import type { Rule } from '../rule.js';
import { foodName, onePack, packWords } from './words.js';

/** A remainder that spoils, or that is too little to keep. */
export const awkwardLeftover: Rule<'awkward-leftover'> = {
  name: 'awkward-leftover',
  severity: 'warning',
  describe({ text, food, grams, spoils, days, packs }, kitchen) {
    const left = `${grams.toDecimalPlaces(0)} g`;
    const keeps = days === 1 ? 'which keeps a day' : `which keeps ${days} days`;
    const why = spoils ? keeps : 'too little to be worth keeping';
    const bought = packs
      .map(({ count, pack }) => (count === 1 ? onePack(pack) : `${count} × ${packWords([pack])}`))
      .join(' and ');
    return {
      text: `\`${text}\` of ${foodName(food, kitchen)} from ${bought} leaves ${left}, ${why}. Use the whole pack, or say what to do with the rest`,
      actual: text,
      expected: [],
    };
  },
};
