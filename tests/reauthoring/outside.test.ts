import { expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { recipeOf } from './recipe-of.js';
import { setting } from './setting.js';

function ratiosWith(butter: string): string[] {
  const lines = ['200 g plain flour', '200 g caster sugar', '4 large eggs', '10 g baking powder', butter];
  const result = reauthoredOf(recipeOf({ kitchen: 'uk', lines }), 'eu', setting);
  return result.ratios.map(({ name }) => name);
}

test.for([
  '200 g butter',
  '200 g butter, plus extra for greasing',
  '200 g butter, softened, plus 1 tbsp for the pan',
  '200 g butter, a little reserved for greasing',
])('%s goes into the batter, and is held to the flour', (butter) => {
  expect(ratiosWith(butter)).toContain('butter : flour');
});

test.for(['20 g butter, for greasing', '20 g soft butter for the pan'])('%s does not', (butter) => {
  expect(ratiosWith(butter)).not.toContain('butter : flour');
});
