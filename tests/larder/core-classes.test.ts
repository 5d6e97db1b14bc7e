import { builtInLarder } from '@retare/larder';
import { expect, test } from 'vitest';

const foods = [...builtInLarder().foods.values()];

// Words of names that say an animal, the classes that its raw flesh has, and the foods that hold the word and need no class: cooked or
// cured ready to eat, rendered, a stock, or no flesh at all.
const saying: readonly { word: RegExp; classes: readonly string[]; butNot: readonly string[] }[] = [
  {
    word: /\b(?:minced|ground|mince)\b.*\b(?:chicken|turkey)\b|\b(?:chicken|turkey)\b.*\bmince\b/i,
    classes: ['ground-poultry'],
    butNot: [],
  },
  {
    word: /\b(?:chicken|turkey|duck|duckling)\b/i,
    classes: ['poultry', 'poultry-pieces', 'ground-poultry', 'offal', 'leftovers'],
    butNot: [
      ...['chicken-fat', 'duck-fat', 'chicken-stock', 'chicken-stock-cube', 'stock-paste', 'cream-of-chicken-soup'],
      ...['chicken-bouillon-cube', 'chicken-stock-powder', 'vegetable-stock'],
    ],
  },
  {
    word: /\b(?:ground|minced) (?:beef|pork|lamb|veal|meat)\b|\b(?:beef|pork|lamb|veal|steak) mince\b/i,
    classes: ['ground-meat'],
    butNot: [],
  },
  {
    word: /\bpork\b(?! (?:sausages?|lard))/i,
    classes: ['pork', 'ground-meat', 'ham', 'sausage'],
    butNot: ['lard'],
  },
  {
    word: /\b(?:bacon|pancetta|lardons?|gammon)\b/i,
    classes: ['pork', 'ham'],
    butNot: ['bacon-cooked', 'bacon-fat', 'ham'],
  },
  {
    word: /\b(?:liver|kidney|tongue)\b/i,
    classes: ['offal'],
    butNot: ['kidney-beans', 'dried-kidney-beans', 'cannellini-beans'],
  },
  {
    word: /\b(?:cod|haddock|hake|halibut|trout|salmon|mackerel|sea bass|tilapia|monkfish|kippers?)\b/i,
    classes: ['fish'],
    // Smoked hot or cold to be eaten as it is, tinned, or roe.
    butNot: ['fish-roe', 'hot-smoked-salmon', 'smoked-mackerel', 'smoked-salmon', 'smoked-trout', 'tinned-salmon'],
  },
  {
    word: /\b(?:prawns?|shrimps?|crabs?|lobsters?|mussels?|clams?|scallops?|squid|oysters?)\b(?! (?:sauce|juice|broth|mushrooms?|crackers?|sticks?|nectar|boil|seasoning))/i,
    classes: ['shellfish'],
    butNot: ['cooked-prawn', 'surimi'],
  },
  {
    word: /\b(?:raw|uncooked|fresh|cooking) chorizo\b|\b(?:Italian|breakfast|pork) sausage/i,
    classes: ['sausage'],
    butNot: [],
  },
];

test.for(saying)('a food whose name says $word is of one of its classes: $classes', ({ word, classes, butNot }) => {
  const named = foods.filter(({ names }) =>
    Object.values(names).some((list) => list.some(({ one }) => word.test(one))),
  );
  expect(named.length).toBeGreaterThan(0);
  const wrong = named.filter(({ coreClass }) => coreClass === null || !classes.includes(coreClass));
  expect(wrong.map(({ id }) => id).filter((id) => !butNot.includes(id))).toEqual([]);
});
