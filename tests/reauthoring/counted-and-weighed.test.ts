import { describe, expect, test } from 'vitest';
import { reauthoredOf } from './reauthored.js';
import { converted, recipeOf, textOf } from './recipe-of.js';
import { setting } from './setting.js';

// A pound is 453.59237 g, an ounce a sixteenth of it (NIST SP 811); the steps of what is told are common practice, no source.
const lines = [
  { from: 'uk', line: '4 salmon fillets (about 140g each)', to: 'us', becomes: '4 salmon fillets (about 5 oz each)' },
  { from: 'us', line: '4 salmon fillets (about 5 oz each)', to: 'uk', becomes: '4 salmon fillets (about 140 g each)' },
  { from: 'uk', line: '4 quails (about 200g each)', to: 'us', becomes: '4 quails (about 7 oz each)' },
  { from: 'uk', line: '2 × 200g duck breasts', to: 'us', becomes: '2 (7-oz) duck breasts' },
  { from: 'us', line: '2 (8-oz) duck breasts', to: 'eu', becomes: '2 × 225 g duck breasts' },
  { from: 'us', line: '4 (6 to 8-oz) salmon fillets', to: 'uk', becomes: '4 × 170–225 g salmon fillets' },
  { from: 'us', line: '1 (4-lb) chicken', to: 'uk', becomes: '1 × 1.8 kg chicken' },
  {
    from: 'us',
    line: '1 (3- to 4-pound) chicken, giblets out',
    to: 'eu',
    becomes: '1 × 1.4–1.8 kg chicken, giblets out',
  },
  { from: 'us', line: '1 (3- to 4-pound) duck', to: 'ca', becomes: '1 (3- to 4-pound) duck' },
  {
    from: 'uk',
    line: '4 Bramley-type cooking apples (about 900g)',
    to: 'us',
    becomes: '4 Bramley-type cooking apples (about 2 lb)',
  },
  { from: 'uk', line: '2 carrots (about 200g)', to: 'us', becomes: '2 carrots (about 7 oz)' },
  { from: 'us', line: '8 chicken thighs (about 2½ lb)', to: 'uk', becomes: '8 chicken thighs (about 1.1 kg)' },
  { from: 'us', line: 'juice of 2 limes (about ¼ cup)', to: 'uk', becomes: 'juice of 2 limes (about 60 ml)' },
  { from: 'uk', line: 'juice of 1 lemon (about 3 tbsp)', to: 'au', becomes: 'juice of 1 lemon (about 2 tbsp + 1 tsp)' },
  { from: 'uk', line: 'juice of 1 lemon (about 3 tbsp)', to: 'eu', becomes: 'juice of 1 lemon (about 3 tbsp)' },
  { from: 'us', line: '2 carrots (about ½ lb)', to: 'ca', becomes: '2 carrots (about ½ lb)' },
] as const;

describe('a count with what it weighs', () => {
  test.for(lines)(
    '$line from $from keeps the count in $to, and says the weight there',
    ({ from, line, to, becomes }) => {
      expect(textOf(converted(line, from, to))).toBe(becomes);
    },
  );

  test.for(lines)('$line from $from is so in a re-authored version for $to too', ({ from, line, to, becomes }) => {
    const result = reauthoredOf(recipeOf({ kitchen: from, lines: [line] }), to, setting);
    expect(result.version.parts[0]?.lines.map(textOf)).toEqual([becomes]);
  });

  test('grows in number, not in size, with a larger batch', () => {
    const post = { kitchen: 'us', lines: ['2 (15-oz) cans butter beans', '4 salmon fillets (about 5 oz each)'] };
    const result = reauthoredOf({ ...recipeOf(post), anchor: 'butter beans' }, 'uk', setting, {
      anchor: 'butter beans',
    });
    expect(result.version.parts[0]?.lines.map(textOf)[1]).toMatch(/^\d salmon fillets \(about 140 g each\)$/u);
  });
});
