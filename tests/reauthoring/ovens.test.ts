import { celsiusOf, dialSettings, Exact, ovenHeat, readOven, writeOven } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../reference/read-csv.js';
import { mentionIn, ovenOf, rulesOfMention } from './recipe-of.js';
import { kitchen, kitchenIds } from './setting.js';

const table = readCsv('gas-marks.csv');
const settingsOf = (text: string, from: string, to: string): string => mentionIn(ovenOf(text), from, to).text;

describe('an oven of another kitchen', () => {
  test.for(table)('$fahrenheit °F of a US oven is gas $mark in the UK: $source', ({ mark, fahrenheit }) => {
    expect(settingsOf(`${fahrenheit}°F`, 'us', 'uk')).toMatch(new RegExp(`/gas ${mark}$`));
  });

  test.for(table)('$fahrenheit °F of a US oven is $celsius °C in the UK, or a dial step beside it: $source', (row) => {
    const heat = ovenHeat(readOven(`${row.fahrenheit}°F`), kitchen('us'));
    const [conventional, fan] = heat === null ? [] : dialSettings(heat, kitchen('uk'));
    expect(Math.abs(Number(conventional?.low) - Number(row.celsius))).toBeLessThanOrEqual(10);
    expect(Number(conventional?.low) - Number(fan?.low)).toBe(20);
  });

  test.for(table)('gas $mark of a UK oven is $celsius °C in the EU: $source', ({ mark, celsius, fan_celsius }) => {
    expect(settingsOf(`gas mark ${mark}`, 'uk', 'eu')).toBe(`${celsius}°C/${fan_celsius}°C fan`);
  });

  test.for(table)('gas $mark of a UK oven is $fahrenheit °F in the US, or a dial step beside it: $source', (row) => {
    const written = settingsOf(`gas mark ${row.mark}`, 'uk', 'us');
    expect(Math.abs(Number.parseInt(written, 10) - Number(row.fahrenheit))).toBeLessThanOrEqual(25);
  });

  // Fan differences: US and Canada 25 °F (professional cookery handbook), elsewhere 20 °C (NSW Government chart).
  test.for([
    { from: 'us', text: '350°F', to: 'uk', becomes: '180°C/160°C fan/gas 4', by: '176.7 °C' },
    { from: 'us', text: '350°F', to: 'eu', becomes: '180°C/160°C fan', by: '176.7 °C' },
    { from: 'us', text: '350°F', to: 'au', becomes: '180°C/160°C fan', by: '176.7 °C' },
    { from: 'us', text: '350°F', to: 'ca', becomes: '350°F', by: 'a Canadian dial is in °F' },
    { from: 'us', text: '350', to: 'uk', becomes: '180°C/160°C fan/gas 4', by: 'the unit is the writer’s own' },
    { from: 'us', text: '200', to: 'eu', becomes: '90°C/70°C fan', by: 'and never a guess: 93.3 °C' },
    { from: 'us', text: '325°F convection', to: 'uk', becomes: '180°C/160°C fan/gas 4', by: '325 + 25 = 350 °F' },
    { from: 'uk', text: '160 °C fan', to: 'us', becomes: '350°F', by: '160 + 20 = 180 °C = 356 °F' },
    { from: 'au', text: 'fan 180', to: 'uk', becomes: '200°C/180°C fan/gas 6', by: '180 + 20 °C' },
    { from: 'uk', text: '180 °C/160 °C fan/gas 4', to: 'us', becomes: '350°F', by: 'conventional heat is what counts' },
    { from: 'uk', text: '180C', to: 'ca', becomes: '350°F', by: '356 °F' },
    { from: 'us', text: '350–375°F', to: 'uk', becomes: '180–190°C/160–170°C fan/gas 4–5', by: '176.7 to 190.6 °C' },
    { from: 'us', text: '325–335°F', to: 'eu', becomes: '160–170°C/140–150°C fan', by: '162.8 to 168.3 °C' },
    { from: 'us', text: '350–355°F', to: 'eu', becomes: '180°C/160°C fan', by: 'both ends on one mark' },
    { from: 'us', text: 'gas mark 4', to: 'us', becomes: 'gas mark 4', by: 'a native method is not touched' },
    { from: 'us', text: 'gas mark 4', to: 'eu', becomes: '180°C/160°C fan', by: '250 + 25 × 4 = 350 °F' },
    { from: 'us', text: '600°F', to: 'uk', becomes: '250°C/230°C fan/gas 9', by: 'the dial ends' },
    { from: 'us', text: '100°F', to: 'eu', becomes: '50°C/30°C fan', by: 'the dial begins' },
    { from: 'uk', text: '300°C', to: 'us', becomes: '550°F', by: 'the dial ends' },
    { from: 'uk', text: '60°C', to: 'us', becomes: '170°F', by: 'the dial begins' },
  ])('$text from $from is set to $becomes in $to: $by', ({ from, text, to, becomes }) => {
    expect(settingsOf(text, from, to)).toBe(becomes);
  });

  test('is on a mark of its dial, and the nearest', () => {
    const heats = fc.integer({ min: 400, max: 3000 }).map((tenths) => new Exact(tenths).dividedBy(10));
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), heats, (id, celsius) => {
        const { oven } = kitchen(id);
        const [first] = dialSettings({ celsius, highCelsius: null, disagreement: null }, kitchen(id));
        // All marks there could be, by looking at each; then no lower than the dial begins and no higher than it ends.
        const marks = Array.from({ length: 100 }, (_, n) => oven.step.times(n));
        const off = (mark: Exact): Exact => celsiusOf(mark, oven.unit).minus(celsius).abs();
        const nearest = marks.reduce((best, mark) => (off(mark).lessThan(off(best)) ? mark : best));
        const onDial = Exact.min(Exact.max(nearest, oven.min), oven.max);
        const set = new Exact(first?.low ?? Number.NaN);
        // Halfway between two marks either will do.
        expect(set.equals(onDial) || off(set).equals(off(onDial)) ? '' : `${celsius} °C is set to ${set}`).toBe('');
      }),
    );
  });
});

describe('several settings of one oven', () => {
  // Dial steps: 10 °C in the UK, 25 °F (13.9 °C) in the US (common practice, no source).
  test.for([
    ['uk', '180 °C/160 °C fan/gas 4', false],
    ['uk', '180 °C/gas 5', false],
    ['uk', '180 °C/gas 6', true],
    ['uk', '180 °C/350 °F', false],
    ['uk', '180 °C/180 °C fan', true],
    ['us', '350°F/180 °C', false],
    ['us', '350°F/200 °C', true],
    ['us', '350°F/325°F convection', false],
    ['us', '350°F', false],
  ] as const)('of the %s kitchen, `%s`: disagree is %s', ([id, text, disagree]) => {
    expect(rulesOfMention(mentionIn(ovenOf(text), id, id))).toEqual(disagree ? ['oven-disagrees'] : []);
  });

  test('that disagree are both named', () => {
    const [found] = mentionIn(ovenOf('180 °C/gas 6'), 'uk', 'uk').problems;
    expect(found?.problem).toMatchObject({ rule: 'oven-disagrees', first: '180 °C', second: 'gas 6' });
  });

  test('count by the conventional one, wherever it stands', () => {
    expect(settingsOf('fan 150 °C (180 °C)', 'uk', 'eu')).toBe('180°C/160°C fan');
    expect(settingsOf('gas 3 (180 °C)', 'uk', 'eu')).toBe('180°C/160°C fan');
  });
});

test('no setting at all is no heat', () => {
  expect(ovenHeat([], kitchen('uk'))).toBeNull();
  expect(writeOven([])).toBe('');
});

describe('an oven cooler than any gas mark', () => {
  // Gas ¼ is 110 °C (oven.csv); drying at 60 °C has no mark.
  test('is stated without one', () => {
    const uk = kitchen('uk');
    const heat = ovenHeat(readOven('60 °C'), uk);
    expect(heat === null ? [] : dialSettings(heat, uk).map(({ kind }) => kind)).toEqual(['conventional', 'fan']);
  });
});
