import { celsiusOf, centimetresIn, Exact, isLengthUnit, lengthFor, temperatureFor } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converted, mentionIn, spanOf, tempOf, textOf } from './recipe-of.js';
import { kitchen, kitchenIds } from './setting.js';

const id = fc.constantFrom(...kitchenIds);

describe('a temperature of another kitchen', () => {
  test.for([
    { from: 'us', text: '110°F', to: 'uk', becomes: '43°C', by: '43.3 °C' },
    { from: 'us', text: '100°F', to: 'uk', becomes: '38°C', by: '37.8 °C' },
    { from: 'us', text: '350°F', to: 'ca', becomes: '177°C', by: '176.7 °C: no dial, no step' },
    { from: 'us', text: '40°F', to: 'uk', becomes: '4°C', by: '4.4 °C: it chills' },
    { from: 'us', text: '50°F', to: 'uk', becomes: '10°C', by: '10 °C exactly: it chills' },
    { from: 'us', text: '51°F', to: 'uk', becomes: '11°C', by: '10.6 °C: it does not' },
    { from: 'us', text: '0°F', to: 'eu', becomes: '-18°C', by: '−17.8 °C, down' },
    { from: 'uk', text: '5 °C', to: 'us', becomes: '41°F', by: '41 °F exactly' },
    { from: 'uk', text: '4 °C', to: 'us', becomes: '39°F', by: '39.2 °F: it chills' },
    { from: 'uk', text: '-18 °C', to: 'us', becomes: '-1°F', by: '−0.4 °F, down' },
    { from: 'uk', text: '82 °C', to: 'us', becomes: '180°F', by: '179.6 °F' },
    { from: 'us', text: '110–115°F', to: 'uk', becomes: '43–46°C', by: '43.3 to 46.1 °C' },
    { from: 'us', text: '350', to: 'uk', becomes: '177°C', by: 'the unit is the writer’s own' },
    { from: 'us', text: 'about 110°F', to: 'uk', becomes: 'about 43°C', by: 'the words around it are kept' },
    { from: 'us', text: 'soft ball, 235–240°F', to: 'eu', becomes: 'soft ball, 113–116°C', by: '112.8 to 115.6 °C' },
    { from: 'us', text: '240°F, then 320°F', to: 'uk', becomes: '116°C, then 160°C', by: 'each where it stands' },
    { from: 'us', text: '300°F (150°C) or so', to: 'uk', becomes: '149°C or so', by: 'said once' },
    { from: 'eu', text: '-18 °C or colder', to: 'us', becomes: '-1°F or colder', by: 'the words around it are kept' },
    { from: 'us', text: '105–115°F (40–46°C)', to: 'uk', becomes: '41–46°C', by: '40.6 to 46.1 °C, said once' },
  ])('$text from $from reads $becomes in $to: $by', ({ from, text, to, becomes }) => {
    expect(mentionIn(tempOf(text), from, to).text).toBe(becomes);
  });

  test('that chills never comes out warmer', () => {
    const cold = fc.integer({ min: -400, max: 100 }).map((tenths) => new Exact(tenths).dividedBy(10));
    fc.assert(
      fc.property(id, cold, (to, celsius) => {
        const { value, unit } = temperatureFor(celsius, 'C', kitchen(to));
        const drop = celsius.minus(celsiusOf(value, unit)).toNumber();
        expect([value.isInteger(), drop >= 0, drop < 1]).toEqual([true, true, true]);
      }),
    );
  });

  test('that warms is the nearest degree', () => {
    const warm = fc.integer({ min: 101, max: 3000 }).map((tenths) => new Exact(tenths).dividedBy(10));
    fc.assert(
      fc.property(id, warm, (to, celsius) => {
        const { value, unit } = temperatureFor(celsius, 'C', kitchen(to));
        const off = celsius.minus(celsiusOf(value, unit)).abs().toNumber();
        expect(value.isInteger() && off <= (unit === 'C' ? 0.5 : 0.5 / 1.8) + 1e-12).toBe(true);
      }),
    );
  });
});

describe('a length of another kitchen', () => {
  // The inch is exactly 2.54 cm (international yard and pound agreement, 1959).
  test.for([
    { from: 'us', text: '2 in', to: 'uk', becomes: '5 cm', by: '5.08 cm' },
    { from: 'us', text: '1 inch', to: 'uk', becomes: '2.5 cm', by: '2.54 cm' },
    { from: 'us', text: '½ inch', to: 'uk', becomes: '1.25 cm', by: '1.27 cm' },
    { from: 'us', text: '¼ inch', to: 'uk', becomes: '6 mm', by: '6.35 mm' },
    { from: 'us', text: '⅛ inch', to: 'uk', becomes: '3 mm', by: '3.2 mm' },
    { from: 'us', text: '6 in', to: 'eu', becomes: '15 cm', by: '15.24 cm' },
    { from: 'us', text: '12 inches', to: 'eu', becomes: '30 cm', by: '30.48 cm' },
    { from: 'uk', text: '5 cm', to: 'us', becomes: '2 in', by: '1.97 in' },
    { from: 'uk', text: '2 cm', to: 'us', becomes: '¾ in', by: '0.79 in' },
    { from: 'uk', text: '3 mm', to: 'us', becomes: '⅛ in', by: '0.118 in' },
    { from: 'uk', text: '1 mm', to: 'us', becomes: '1/16 in', by: 'no ruler shows less' },
    { from: 'uk', text: '2 mm', to: 'us', becomes: '1/16 in', by: '0.079 in: an eighth is half as much again' },
    { from: 'uk', text: '30 cm', to: 'us', becomes: '11¾ in', by: '11.81 in' },
    { from: 'us', text: '1–2 in', to: 'uk', becomes: '2.5–5 cm', by: '2.54 to 5.08 cm' },
    { from: 'us', text: '¼–1 inch', to: 'uk', becomes: '6 mm to 2.5 cm', by: 'each in its own unit' },
    { from: 'us', text: '1 by 4 inches', to: 'uk', becomes: '2.5 by 10 cm', by: 'both sides' },
    { from: 'us', text: '2 × 3 in', to: 'eu', becomes: '5 × 7.5 cm', by: 'both sides' },
    { from: 'us', text: '2-inch by 3-inch pieces', to: 'au', becomes: '5 by 7.5 cm pieces', by: 'both sides' },
    { from: 'us', text: '¼ by 2 inches', to: 'uk', becomes: '6 mm by 5 cm', by: 'each in its own unit' },
    { from: 'eu', text: '2 cm x 3 cm', to: 'us', becomes: '¾ × 1¼ in', by: '0.79 by 1.18 in' },
    {
      from: 'us',
      text: '2 inches long and ½ inch thick',
      to: 'uk',
      becomes: '5 cm long and 1.25 cm thick',
      by: 'both',
    },
    { from: 'us', text: '1 inch (2.5 cm) cubes', to: 'eu', becomes: '2.5 cm cubes', by: 'said once' },
    { from: 'uk', text: '5cm/2in', to: 'us', becomes: '2in', by: 'the author’s own words' },
    { from: 'us', text: '1 cm dice', to: 'uk', becomes: '1 cm dice', by: 'a unit that is read there is kept' },
    { from: 'eu', text: '12 mm', to: 'uk', becomes: '12 mm', by: 'a unit that is read there is kept' },
    { from: 'us', text: '¼-inch-thick', to: 'ca', becomes: '¼-inch-thick', by: 'a unit that is read there is kept' },
  ])('$text from $from reads $becomes in $to: $by', ({ from, text, to, becomes }) => {
    expect(mentionIn(spanOf(text), from, to).text).toBe(becomes);
  });

  test('is on the marks of a ruler there, within half a step', () => {
    const millimetres = fc.integer({ min: 10, max: 6000 }).map((tenths) => new Exact(tenths).dividedBy(10));
    fc.assert(
      fc.property(id, millimetres, (to, mm) => {
        const { low, unit } = lengthFor(mm, 'mm', kitchen(to));
        if (!isLengthUnit(unit)) throw new RangeError(`${unit} is no length.`);
        const cm = mm.dividedBy(10).toNumber();
        const inches = cm / 2.54;
        const step =
          unit === 'in'
            ? inches < 0.09375
              ? 0.0625
              : inches < 0.5
                ? 0.125
                : 0.25
            : unit === 'mm'
              ? 1
              : cm < 2
                ? 0.25
                : cm < 10
                  ? 0.5
                  : 1;
        const off = low.times(centimetresIn(unit)).minus(cm).abs().dividedBy(centimetresIn(unit)).toNumber();
        // Nothing is cut thinner than the finest mark.
        const isFinest = low.equals(step);
        expect([low.dividedBy(step).isInteger(), isFinest || off <= step / 2 + 1e-9]).toEqual([true, true]);
      }),
    );
  });
});

describe('a further quantity of a line', () => {
  test.for([
    { line: '2 carrots, cut into 2-inch pieces', becomes: '2 carrots, cut into 5 cm pieces' },
    { line: '2 carrots, cut into 1 by 4-inch strips', becomes: '2 carrots, cut into 2.5 cm by 10 cm strips' },
    { line: '2 carrots, cut into ½-inch (1 cm) dice', becomes: '2 carrots, cut into 1 cm dice' },
    { line: '1 celery root, in 1-inch (2.5 cm) cubes', becomes: '1 celeriac, in 2.5 cm cubes' },
    { line: '2 carrots, in 2-inch/5-cm chunks', becomes: '2 carrots, in 5-cm chunks' },
    { line: '2 carrots, cut into 5 mm slices', becomes: '2 carrots, cut into 5 mm slices' },
    { line: '2 (3-inch) cinnamon sticks', becomes: '2 × 7.5 cm cinnamon sticks' },
    { line: '1 cinnamon stick (3 inches)', becomes: '1 cinnamon stick (7.5 cm)' },
    { line: '2 (1-inch) strips of lemon zest', becomes: '2 × 2.5 cm strips of lemon zest' },
    { line: '1 cup milk, warmed to 110°F', becomes: '240 ml milk, warmed to 43°C' },
    { line: '1 cup flour, plus 2 tbsp for dusting', becomes: '125 g flour, plus 2 tbsp for dusting' },
    { line: '1 cup sugar, plus ½ cup to finish', becomes: '200 g granulated sugar, plus 100 g to finish' },
  ])('$line reads $becomes in a UK kitchen', ({ line, becomes }) => {
    expect(textOf(converted(line, 'us', 'uk'))).toBe(becomes);
  });
});
