import { describe, expect, test } from 'vitest';
import { said } from './said.ts';

const at = (oven: string, kitchen = 'uk'): string => `:::method{kitchen=${kitchen}}\nHeat to :oven[${oven}].\n:::\n`;

describe('oven-disagrees', () => {
  test('names settings of one oven that are not the same heat', () => {
    expect(said(at('180 °C/200 °C fan/gas 4'), 'oven-disagrees', { kitchen: 'uk' })).toEqual([
      expect.objectContaining({
        severity: 'warning',
        kitchens: ['uk'],
        at: '180 °C/200 °C fan/gas 4',
        text: expect.stringMatching(
          /are more than a dial step apart\. Correct one of them; the conventional heat is what other kitchens get$/,
        ),
      }),
    ]);
  });

  test.for(['180 °C/160 °C fan/gas 4', '180 °C/170 °C fan/gas 4', '180 °C', 'gas 4'])(
    'says nothing of `%s`',
    (oven) => {
      expect(said(at(oven), 'oven-disagrees', { kitchen: 'uk' })).toEqual([]);
    },
  );
});
