import {
  applyEdits,
  foodsIn,
  type Ingredients,
  isRefusal,
  type Line,
  ratiosOfVersion,
  reauthor,
  type VersionPart,
} from '@retare/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineOf, recipeOf } from './recipe-of.js';
import { kitchenIds, setting } from './setting.js';

/** Foods with the amounts that writers give them; what is whipped, drained, counted, ranged, minced and not sold elsewhere among them. */
const pool = [
  ['all-purpose flour', ['1 cup', '2½ cups', '250 g', '1 lb']],
  ['self-rising flour', ['1½ cups', '200 g']],
  ['whole-wheat flour', ['⅔ cup', '100 g']],
  ['baking powder', ['1 tsp', '2½ tsp', '12 g']],
  ['instant yeast', ['1 tsp', '7 g']],
  ['kosher salt', ['½ tsp', '1½ tsp', '2 tsp']],
  ['table salt', ['¼ tsp', '1 tsp', '6 g']],
  ['paprika', ['½ tsp', '1–2 tsp', '1 tbsp']],
  ['dried oregano', ['½ tsp', '1 tsp']],
  ['milk', ['¾ cup', '1–1¼ cups', '300 ml']],
  ['half-and-half', ['½ cup', '2 cups']],
  ['buttermilk', ['1 cup', '250 ml']],
  ['water', ['⅓ cup', '350 ml']],
  ['sugar', ['2 tbsp', '1 cup', '150 g']],
  ['light corn syrup', ['¼ cup']],
  ['unsalted butter', ['2 tbsp', '½ cup', '100 g']],
  ['olive oil', ['1 tbsp', '60 ml']],
  ['large eggs', ['1', '3', '2–3']],
  ['cooked chickpeas', ['1½ cups', '2 cups']],
  ['chickpeas, drained', ['1 (15-oz) can', '2 (15-oz) cans']],
  ['crushed tomatoes', ['1 (28-oz) can', '1½ cups']],
  ['ground beef', ['1 lb', '400 g']],
  ['onions, chopped', ['2', '1 cup']],
  ['garlic', ['2 cloves', '4 cloves']],
  ['graham cracker crumbs', ['1 cup']],
  ['unsweetened chocolate', ['4 oz', '100 g']],
  ['cake flour', ['1 cup', '2½ cups']],
  ['cocoa powder', ['⅓ cup', '30 g']],
  ['butter crackers', ['1 cup']],
  ['heavy cream', ['½ cup', '1½ cups']],
  ['whole milk', ['1 cup']],
  ['cornstarch', ['2 tbsp']],
  ['unflavored gelatin', ['1 tbsp', '10 g']],
] as const;

const anyLine = fc
  .constantFrom(...pool)
  .chain(([food, amounts]) => fc.constantFrom(...amounts).map((amount) => `${amount} ${food}`));

/** The block that a draft writes for a part, as it is read. */
function readBack({ part, ingredients, lines }: VersionPart, kitchen: string): Ingredients {
  const read = lines.flatMap((line) =>
    foodsIn(line).flatMap(({ stated, alone }, at): Line[] => {
      const isElsewhere = stated === null && (at > 0 || line.line.reading.amounts.length > 0);
      return isElsewhere ? [] : [lineOf(applyEdits(line.line.text, alone), kitchen, `${line.line.key} ${at}`)];
    }),
  );
  expect(part.native).toBe(ingredients);
  return { ...ingredients, kitchen, lines: read };
}

test('a draft that is read again bends no ratio', { timeout: 120_000 }, () => {
  let ratios = 0;
  fc.assert(
    fc.property(
      fc.constantFrom('us', 'uk', 'eu', 'au'),
      fc.constantFrom(...kitchenIds),
      fc.uniqueArray(anyLine, { minLength: 2, maxLength: 8, selector: (line) => line.split(' ').slice(-1)[0] }),
      (from, to, lines) => {
        const recipe = recipeOf({ kitchen: from, lines });
        const result = from === to ? null : reauthor(recipe, to, setting);
        if (result === null || isRefusal(result) || result.infeasible !== null) return;
        for (const part of result.version.parts) {
          for (const { name, drift, limit } of ratiosOfVersion(part.part, readBack(part, to), { recipe, setting })) {
            ratios += 1;
            expect(Math.abs(drift), name).toBeLessThanOrEqual(limit + 1e-9);
          }
        }
      },
    ),
    { numRuns: 800 },
  );
  expect(ratios).toBeGreaterThan(500);
});
