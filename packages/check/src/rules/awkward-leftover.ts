import { listed } from '@retare/core';
import { massWords } from 'remark-retare';
import type { Rule } from '../rule.js';
import { aKitchen, foodName, onePack, packWords } from './words.js';

/** A remainder that spoils, or that is too little to keep. */
export const awkwardLeftover: Rule<'awkward-leftover'> = {
  name: 'awkward-leftover',
  severity: 'warning',
  joins: 'or',
  describe({ text, food, grams, spoils, days, packs }, kitchen) {
    const keeps = days === 1 ? 'which keep a day' : `which keep ${days} days`;
    const why = spoils ? keeps : 'too little to be worth keeping';
    const bought = packs.map(({ count, pack }) => (count === 1 ? onePack(pack) : `${count} × ${packWords([pack])}`));
    const name = foodName(food, kitchen);
    return {
      text: `For \`${text}\` ${aKitchen(kitchen, 'middle')} cook buys ${listed(bought, 'and')} of ${name} and has ${massWords(grams, kitchen)} left, ${why}. Use all of it, or say what to do with the rest`,
      actual: text,
      expected: [],
    };
  },
};
