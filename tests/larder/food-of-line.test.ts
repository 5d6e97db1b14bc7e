import { findFoodOfLine, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { leastGrowth } from '../growth.ts';

const { foods } = builtInLarder();
const ofLine = (text: string, kitchen = 'us') => findFoodOfLine(readLine(text), foods, kitchen);
const idOf = (text: string, kitchen?: string) => ofLine(text, kitchen)?.food.id ?? null;

describe('a food among others, or in a state', () => {
  test.for([
    ['1 tsp dried thyme and rosemary', 'dried-thyme', 'of two spices that are spooned together'],
    ['1 tsp each cumin and coriander', null, 'each is as much again'],
    ['1 tsp cumin and salt', null, 'salt is weighed against the whole'],
    ['1 tbsp ginger and garlic', null, 'both are fresh, and neither is a powder'],
    ['2 red and yellow bell peppers', 'red-bell-pepper', 'one plant in two colours'],
    ['1 tsp black and white sesame seeds', 'sesame-seed', 'and black seeds are no sesame'],
    ['2 tbsp garlic-infused olive oil', 'olive-oil', 'the oil'],
    ['2 tbsp rum-infused raisins', null, 'what has drunk it is another thing'],
    ['8 soft-taco size flour tortillas', 'flour-tortilla', 'a size of a tortilla'],
    ['Mexican tortillas', 'flour-tortilla', 'where they are from'],
    ['1 no-knead pizza dough', 'pizza-dough', 'how it was made'],
    ['1 unopened pita', 'pita', 'how it was handled'],
    ['1 taco size lettuce', null, 'which no lettuce is'],
  ] as const)('`%s` is %s: %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

describe('a kind that is named behind the food', () => {
  test.for([
    ['1 kg potatoes (waxy)', 'waxy-potato', 'in brackets'],
    ['2 cups sugar, brown', 'light-brown-sugar', 'behind a comma'],
    ['Flour, all-purpose', 'plain-flour', 'without an amount'],
    ['400 g pasta, preferably fusilli', 'fusilli', 'behind a word that asks for it'],
    ['3 onions (red preferred)', 'red-onion', 'before one'],
    ['1 cup flour (rye flour)', 'rye-flour', 'with the head word again'],
    ['1 pint tomatoes (cherry)', 'cherry-tomato', 'another plant'],
    ['500 g fish (hake or pollock)', 'hake', 'the first of two'],
    ['1 kg potatoes (firm/waxy)', 'waxy-potato', 'beside a word that changes nothing'],
    ['2 lb pork (shoulder)', 'pork-shoulder', 'a cut'],
    ['1 tsp cumin (seeds)', 'cumin-seed', 'a part'],
    ['1 cup berries (raspberries)', 'raspberry', 'where the wide word is no food'],
    ['2 tbsp salça (tomato paste)', 'tomato-paste', 'a word of another tongue'],
    ['500 g minced meat (beef)', 'ground-beef', 'with the state of the wide word'],
    ['1 vanilla (bean)', 'vanilla-pod', 'a part'],
    ['2 cups apples, dried', null, 'a state that the larder does not have'],
    ['1 tsp bay leaf (dried)', 'bay-leaf', 'a state that it always has'],
    ['1 can tomatoes, crushed', 'crushed-tomatoes', 'as the tin has it'],
    ['1 cup butter, unsalted', 'unsalted-butter', 'a state of the shop'],
  ] as const)('`%s` is %s: %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });

  test.for([
    ['1 lb tomatoes, crushed', 'tomato', 'what the cook does'],
    ['1 lb white fish (I use hake)', 'white-fish', 'an example'],
    ['2 onions (red or yellow)', 'onion', 'a choice with the usual one in it'],
    ['1 cup sugar (not brown)', 'granulated-sugar', 'a denial'],
    ['1 cup milk (or oat)', 'milk', 'another choice'],
    ['peanuts, butter, salt', 'peanut', 'a list'],
    ['2 tbsp honey, maple, or sugar', 'honey', 'a list that ends in `or`'],
    ['1 cup marinade (soy sauce)', null, 'one part of it'],
    ['2 cups mixed garden fruits (apples, pears)', null, 'all of them together'],
    ['1 lb liver (chicken, lamb etc.)', 'liver', 'kinds that go on'],
  ] as const)('`%s` is %s, because what follows is %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

describe('a spoon of a bare herb or fruit', () => {
  test.for([
    ['1 tsp basil', 'dried-basil'],
    ['2 tbsp parsley', 'dried-parsley'],
    ['a pinch of thyme', 'dried-thyme'],
    ['1/2 tsp ginger', 'ground-ginger'],
    ['2 tbsp tea', 'tea-leaves'],
    ['1 tsp tarragon (or 1 tbsp fresh)', 'dried-tarragon'],
    ['1 tbsp chopped basil', 'basil'],
    ['1 tbsp parsley, finely chopped', 'parsley'],
    ['1 tbsp fresh thyme', 'thyme'],
    ['1 tbsp sage leaves', 'sage'],
    ['1 tsp ginger paste', 'ginger'],
    ['2 tbsp lemon', 'lemon-juice'],
    ['1 tsp lemon, zested', 'lemon'],
    ['1 tbsp ginger, grated', 'ginger'],
    ['2 tbsp brewed tea', 'tea'],
    ['1 cup basil', 'basil'],
    ['1 cup tea', 'tea'],
    ['2 tbsp cilantro', 'coriander-leaf'],
  ] as const)('`%s` is %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

test.for([
  ['1 tbsp chopped oregano', 'fresh-oregano'],
  ['1/4 cup coriander, chopped', 'coriander-leaf'],
  ['1 tbsp dried oregano, chopped', 'dried-oregano'],
] as const)('what is chopped is fresh: `%s` is %s', ([line, id]) => {
  expect(idOf(line)).toBe(id);
});

test('a word that the line was read without may make another food of it', () => {
  expect(idOf('3 prickly pears')).toBe(null);
});

describe('how a food is measured', () => {
  test.for([
    ['5 ears of corn', 'corn-on-the-cob', 'an ear is the whole cob'],
    ['2 ears of very fresh corn', 'corn-on-the-cob', 'an ear is the whole cob'],
    ['1 cube vegetable stock', 'vegetable-stock-cube', 'a cube is no liquid'],
    ['2 bags of tea', 'tea-leaves', 'a bag holds leaves'],
    ['5 pods cardamom', 'cardamom-pods', 'a pod is whole'],
    ['2 inches cinnamon', 'cinnamon-stick', 'a stick has a length'],
    ['1 can chipotles in adobo', 'chipotle-in-adobo', 'what it lies in is in the name'],
    ['1 can diced tomatoes with green chiles', 'tomatoes-with-chiles', 'what it comes with is in the name'],
    ['1 can chicken', null, 'the counter sells no tins'],
    ['1 can mushrooms', 'tinned-mushrooms', 'not those of the counter'],
    ['1 can broccoli', null, 'the counter sells no tins'],
    ['1 can of tuna, finely flaked', 'tinned-tuna', 'the tin is tried with the shortest name too'],
    ['4 chopped tomatoes', 'tomato', 'nobody counts what is chopped in a tin'],
    ['4 diced tomatoes', 'tomato', 'nobody counts what is chopped in a tin'],
    ['3 sardines', 'sardine', 'but whole fish from a tin'],
    ['2 cups fresh diced tomatoes', 'tomato', 'no tin is fresh'],
    ['1 tsp fresh turmeric', 'fresh-turmeric', 'no powder is fresh'],
    ['1 tsp fresh ground pepper', 'black-pepper', 'but freshly ground'],
    ['2 cups shredded cooked chicken', 'cooked-chicken', 'cooked before it is measured'],
    ['2 cups chicken, cooked and shredded', 'cooked-chicken', 'cooked before it is measured'],
    ['1 lb chicken, cooked and shredded', 'chicken-meat', 'weighed before it is cooked'],
    ['6 slices bacon, cooked and crumbled', 'bacon', 'counted before it is cooked'],
    ['1 cup cooked quinoa', null, 'raw it would be three times as much'],
    ['cooked quinoa', 'quinoa', 'where nothing is measured'],
    ['1 cup cooked black beans', 'black-beans', 'as they are in the tin'],
    ['1 cup uncooked grits', 'grits', 'as they are sold'],
  ] as const)('`%s` is %s: %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

describe("another recipe's result", () => {
  test.for([
    ['[lemon mayonnaise](/lemon-mayonnaise)', null],
    ['1 batch of cabbage slaw', null],
    ['[Spicy mayo](../sauces/spicy-mayo.md)', null],
    ['1 lb [chopped steak](/chopped-steak)', null],
    ['[cooked chard](/cooked-chard)', 'swiss-chard'],
    ['[Simple cooked shrimp](/simple-shrimp)', 'cooked-prawn'],
    ['[Leek & potato](/leek-and-potato)', null],
    ['[corn tortillas](/corn-tortillas)', 'corn-tortilla'],
    ['1 recipe [pizza dough](/pizza-dough)', 'pizza-dough'],
    ['[grated cheddar cheese](/cheese)', 'cheddar'],
    ['[spicy mayo](https://example.com/shop)', 'mayonnaise'],
    ['Ground [beef](/beef)', 'ground-beef'],
  ] as const)('`%s` is %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

describe('a head word behind the alternatives', () => {
  test.for([
    ['3 long or 5 short cucumbers', 'cucumber'],
    ['1 tbsp Cajun / Creole seasoning', 'cajun-seasoning'],
    ['Sunflower, corn or other vegetable oil', 'sunflower-oil'],
    ['walnut oil / sesame oil', 'walnut-oil'],
    ['1 can fire-roasted diced tomatoes', 'diced-tomatoes'],
    ['garlic and onion powder', 'garlic-powder'],
    ['apples and lemon juice', 'apple'],
  ] as const)('`%s` is %s', ([line, id]) => {
    expect(idOf(line)).toBe(id);
  });
});

test('a food is named by its own words, also where another food is meant', () => {
  expect(ofLine('1 kg potatoes (waxy)')?.name.text).toBe('potatoes');
  expect(ofLine('1 tsp basil')?.name.text).toBe('basil');
});

test('ten thousand clauses behind a food are read in linear time', () => {
  const texts = [1250, 5000].map((times) => `1 cup milk, ${'a, (b), '.repeat(times)}`);
  expect(texts.map((text) => idOf(text))).toEqual(['milk', 'milk']);
  // Four times as long, and sixteen times if it were quadratic.
  expect(leastGrowth((text) => idOf(text), texts, { runs: 2, goodEnough: 8 })).toBeLessThanOrEqual(8);
});
