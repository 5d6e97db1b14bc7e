import { readLine, statedIn } from '@retare/core';
import { describe, expect, test } from 'vitest';

describe('how full a spoon is, said apart from it', () => {
  test.for([
    ['1 tbsp heaping peanut butter', 'heaping', 'peanut butter'],
    ['2 tbsp (heaped) cocoa powder', 'heaped', 'cocoa powder'],
    ['3 tbsp plain flour, heaped', 'heaped', 'plain flour'],
    ['1 tsp ground cumin, rounded, toasted', 'rounded', 'ground cumin, toasted'],
    ['1 cup (scant) buttermilk', 'scant', 'buttermilk'],
    ['scant ½ cup oil', 'scant', 'oil'],
    ['a scant ½ cup oil', 'scant', 'oil'],
    ['heaping ½ cup sugar', 'heaping', 'sugar'],
    ['2 heaped tbsp honey', 'heaped', 'honey'],
  ] as const)('%s', ([line, fill, rest]) => {
    const reading = readLine(line);
    expect(statedIn(reading)?.statements[0]?.[0]?.fill).toBe(fill);
    const left = reading.amountSpans.reduceRight(
      (text, { start, end }) => text.slice(0, start) + text.slice(end),
      reading.text,
    );
    expect(left.trim()).toBe(rest);
  });

  test.for(['2 tbsp butter, for a generous coating', '1 tbsp flour, plus a heaped spoon more', '100 g flour, heaped'])(
    'not in %s',
    (line) => {
      expect(statedIn(readLine(line))?.statements[0]?.[0]?.fill).toBeNull();
    },
  );
});
