import { readFileSync } from 'node:fs';
import { builtInLarder } from '@retare/larder';
import { describe, expect, test } from 'vitest';

const page = readFileSync(new URL('../../packages/larder/dist/foods.html', import.meta.url), 'utf8');
const { foods, kitchens } = builtInLarder();

/** The article of one food, as it stands in the page. */
function articleOf(id: string): string {
  const start = page.indexOf(`<article id="${id}"`);
  return start < 0 ? '' : page.slice(start, page.indexOf('</article>', start));
}

describe('the page of foods', () => {
  test('has every food once', () => {
    const ids = [...page.matchAll(/<article id="([^"]+)"/g)].map(([, id = '']) => id);
    expect(ids.toSorted()).toEqual([...foods.keys()].toSorted());
  });

  test('says for every food and kitchen how it is sold', () => {
    const unsaid = [...foods.keys()].flatMap((id) => {
      const sold = articleOf(id).split('<dt>sold</dt>')[1] ?? '';
      const named = [...sold.matchAll(/<b>([^<]+)<\/b>/g)].flatMap(([, ids = '']) => ids.split(' '));
      return [...kitchens.keys()].filter((kitchen) => !named.includes(kitchen)).map((kitchen) => `${id} ${kitchen}`);
    });
    expect(unsaid).toEqual([]);
  });

  test('leads from every mark to a source that is there', () => {
    const marks = new Set([...page.matchAll(/href="#(s\d+)"/g)].map(([, id = '']) => id));
    const listed = new Set([...page.matchAll(/<li id="(s\d+)">/g)].map(([, id = '']) => id));
    expect(marks.size).toBeGreaterThan(100);
    expect([...marks].filter((id) => !listed.has(id))).toEqual([]);
  });

  test('gives a stand-in with its proportions and the allergens that it adds', () => {
    expect(articleOf('unsweetened-chocolate')).toMatch(
      /not sold.*instead 60 % cocoa-powder and 40 % unsalted-butter \(adds milk\)/,
    );
  });

  test('has all that it needs in itself', () => {
    expect(page).not.toMatch(/(?:src|href)="(?!#)/);
    expect(page).not.toMatch(/@import|url\(/);
  });
});
