import { describe, expect, test } from 'vitest';
import { lines, said } from './said.ts';

const method = (words: string, kitchen = 'us'): string => `:::method{kitchen=${kitchen}}\n${words}\n:::\n`;

describe('underdone', () => {
  test('names a core temperature below the authority of its own kitchen', () => {
    expect(said(method('Roast to :core[150°F]{of=poultry}.'), 'underdone')).toEqual([
      {
        severity: 'error',
        kitchens: ['us'],
        at: '150°F',
        text: '`150°F` is below the 165°F that USDA gives for poultry. Write `165°F`; readers should follow their own food-safety authority',
        expected: ['165°F'],
      },
    ]);
  });

  test('is judged by the authority of a version that an author wrote', () => {
    const post = `${method('Stir.')}\n${method('Roast to :core[60°C]{of=poultry}.', 'uk')}`;
    const [found] = said(post, 'underdone');
    expect(found).toMatchObject({ severity: 'error', kitchens: ['uk'], at: '60°C' });
    expect(found?.text).toContain('UK Food Standards Agency');
  });

  // 160 °F are 71.1 °C: USDA FSIS, safe minimum internal temperature chart.
  test.for([
    { heat: '160°F (71°C)', text: '`71°C` is below the 160°F (71.2°C)', write: '160°F (72°C)' },
    { heat: '150°F/66°C', text: '`150°F/66°C` is below the 160°F that', write: '160°F/72°C' },
    { heat: '155–165°F', text: '`155–165°F` is below the 160°F that', write: '160–165°F' },
    { heat: '155–160°F', text: '`155–160°F` is below the 160°F that', write: '160°F' },
  ])('names the statement of $heat that is too low', ({ heat, text, write }) => {
    const [found, ...others] = said(method(`To :core[${heat}]{of="ground meat"}.`), 'underdone');
    expect(others).toEqual([]);
    expect(found?.text).toContain(text);
    expect(found?.expected).toEqual([write]);
    expect(said(method(`To :core[${write}]{of="ground meat"}.`), 'underdone')).toEqual([]);
  });

  // 165 °F: USDA FSIS, safe minimum internal temperature chart.
  test.for([
    { heat: '164°F', found: 1 },
    { heat: '165°F', found: 0 },
    { heat: '170°F', found: 0 },
    { heat: '73.8°C', found: 1 },
    { heat: '74°C', found: 0 },
  ])('$heat for poultry: $found', ({ heat, found }) => {
    expect(said(method(`To :core[${heat}]{of=poultry}.`), 'underdone')).toHaveLength(found);
  });

  test('is an error by the food that is named', () => {
    expect(said(method('To :core[150°F]{of="chicken thighs"}.'), 'underdone')).toHaveLength(1);
  });

  test.for([
    { listed: ['1 lb ground beef'], of: 'beef', found: 1 },
    { listed: ['1 lb hamburger meat'], of: 'beef', found: 1 },
    { listed: ['1 lb ground pork'], of: 'pork', found: 1 },
    { listed: ['2 lb beef chuck'], of: 'beef', found: 0 },
    { listed: ['2 lb beef chuck', '1 lb ground beef'], of: 'beef', found: 1 },
    { listed: ['2 lb beef chuck', '1 lb ground beef'], of: 'beef chuck', found: 0 },
    { listed: ['1 cup beef stock'], of: 'beef', found: 0 },
    // In a US shop the bare word is the raw sausage as often as the cured one.
    { listed: ['1 lb chorizo'], of: 'chorizo', found: 1 },
    { listed: ['1 lb fresh chorizo'], of: 'chorizo', found: 1 },
    { listed: ['14 oz kielbasa'], of: 'kielbasa', found: 1 },
  ])('takes $of for what the lines list of it: $listed, $found', ({ listed, of, found }) => {
    expect(said(`${lines(...listed)}\n${method(`Fry to :core[145°F]{of="${of}"}.`)}`, 'underdone')).toHaveLength(found);
  });

  test('says nothing of other temperatures', () => {
    expect(said(method('Warm to :temp[110°F], bake at :oven[150°F].'), 'underdone')).toEqual([]);
  });
});
