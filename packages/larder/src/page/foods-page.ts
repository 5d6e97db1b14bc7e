import { Exact, type Food } from '@retare/core';
import type { Larder } from '../larder.js';
import { filterScript } from './filter-script.js';
import { foodArticle, headOf } from './food-article.js';
import { element, escapeHtml } from './html.js';
import { pageStyle } from './page-style.js';
import { SourceNotes } from './source-notes.js';

/**
 * A page of every food with names, weights, packs by kitchen and sources: one file, readable without script on a phone. The filter
 * appears only where script runs; without it, the letters at the top lead on.
 */
export function foodsPage({ foods, kitchens }: Larder): string {
  const notes = new SourceNotes();
  const cup = kitchens.get('us')?.units.cup ?? new Exact(0);
  const setting = { foods, kitchens: [...kitchens.values()], cup, notes };
  const groups = byLetter([...foods.values()]);
  const body = [...groups].map(([letter, group]) =>
    element(
      'section',
      element('h2', letter, { id: `letter-${letter}` }) + group.map((food) => foodArticle(food, setting)).join('\n'),
    ),
  );
  const links = [...groups.keys()].map((letter) => element('a', letter, { href: `#letter-${letter}` }));
  const kitchenList = setting.kitchens.map(({ id, name }) => `${element('b', id)} ${escapeHtml(name)}`).join(', ');
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>Foods of the larder</title><style>${pageStyle}</style></head>`,
    '<body>',
    '<header>',
    '<h1>Foods of the larder</h1>',
    `<p>${foods.size} foods. Kitchens: ${kitchenList}. Numbers behind a value lead to its source. Pack sizes are common practice. Core temperatures and allergens: follow your own food-safety authority, and read the label.</p>`,
    '<p hidden class="filter"><label for="filter">Show foods whose name has</label> <input id="filter" type="search" autocomplete="off"> <output for="filter"></output></p>',
    element('nav', links.join(' '), { 'aria-label': 'Foods by first letter' }),
    '</header>',
    '<main>',
    ...body,
    `<section>${element('h2', 'Sources', { id: 'sources' })}${notes.list()}</section>`,
    '</main>',
    `<script>${filterScript}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function byLetter(foods: readonly Food[]): Map<string, Food[]> {
  const groups = new Map<string, Food[]>();
  const key = (food: Food) => headOf(food).toLowerCase();
  for (const food of foods.toSorted((one, other) => (key(one) < key(other) ? -1 : 1))) {
    const first = headOf(food).normalize('NFKD').charAt(0).toUpperCase();
    const letter = /[A-Z]/.test(first) ? first : '0-9';
    groups.set(letter, [...(groups.get(letter) ?? []), food]);
  }
  return groups;
}
