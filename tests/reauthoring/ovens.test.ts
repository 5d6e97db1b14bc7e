import { beyondDial, celsiusOf, dialSettings, Exact, ovenHeat, readOven, writeOven } from '@retare/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../reference/read-csv.js';
import { mentionIn, ovenOf, rulesOfMention, versionOf } from './recipe-of.js';
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
    { from: 'au', text: 'gas ½', to: 'eu', becomes: '120°C/100°C fan', by: 'a mark below 1 is 25 °F less: 250 °F' },
    { from: 'us', text: 'gas mark ¼', to: 'eu', becomes: '110°C/90°C fan', by: '225 °F, 107.2 °C' },
    { from: 'us', text: 'gas mark 4', to: 'eu', becomes: '180°C/160°C fan', by: '250 + 25 × 4 = 350 °F' },
    { from: 'us', text: '600°F', to: 'uk', becomes: '316°C (hotter than the dial goes)', by: 'with a fan 296' },
    {
      from: 'us',
      text: '525°F',
      to: 'uk',
      becomes: '274°C (hotter than the dial goes)/250°C fan',
      by: '254 with a fan',
    },
    {
      from: 'us',
      text: '500–550°F',
      to: 'au',
      becomes: '250–288°C (hotter than the dial goes)',
      by: 'one end is enough',
    },
    { from: 'us', text: '100°F', to: 'eu', becomes: '38°C (cooler than the dial goes)', by: 'with a fan 18' },
    { from: 'us', text: '120°F', to: 'uk', becomes: '50°C (without the fan)', by: '48.9 °C; 28.9 with a fan, no gas' },
    { from: 'us', text: '150°F', to: 'au', becomes: '70°C/50°C fan', by: '65.6 °C, 45.6 with a fan' },
    { from: 'us', text: '500°F', to: 'uk', becomes: '250°C/240°C fan/gas 9', by: '260 °C, 240 with a fan' },
    { from: 'us', text: 'a hot oven, 400°F', to: 'eu', becomes: 'a hot oven, 200°C/180°C fan', by: 'words are kept' },
    {
      from: 'us',
      text: '350°F (325°F convection)',
      to: 'uk',
      becomes: '180°C/160°C fan/gas 4',
      by: 'one oven, said once',
    },
    { from: 'uk', text: '200°C (fan 180°C, gas 6)', to: 'us', becomes: '400°F', by: 'one oven, said once' },
    {
      from: 'us',
      text: '350 degrees (moderate)',
      to: 'eu',
      becomes: '180°C/160°C fan (moderate)',
      by: 'words are kept',
    },
    { from: 'uk', text: '73°C', to: 'us', becomes: '170°F', by: '163.4 °F: the first mark is nearer than 175' },
    { from: 'uk', text: '300°C', to: 'us', becomes: '550°F', by: '572 °F, within a step of the last mark' },
    {
      from: 'uk',
      text: '310°C',
      to: 'us',
      becomes: '590°F (hotter than the dial goes)',
      by: '40 °F above the last mark',
    },
    { from: 'uk', text: '65°C', to: 'us', becomes: '170°F', by: '149 °F, within a step of the first mark' },
    { from: 'eu', text: '35 °C', to: 'us', becomes: '95°F (cooler than the dial goes)', by: 'at 170 dough is cooked' },
    {
      from: 'eu',
      text: '25 °C fan',
      to: 'us',
      becomes: '113°F (cooler than the dial goes)',
      by: '45 °C without a fan',
    },
  ])('$text from $from is set to $becomes in $to: $by', ({ from, text, to, becomes }) => {
    expect(settingsOf(text, from, to)).toBe(becomes);
  });

  test('is on a mark of its dial, and the nearest', () => {
    const heats = fc.integer({ min: 400, max: 3000 }).map((tenths) => new Exact(tenths).dividedBy(10));
    fc.assert(
      fc.property(fc.constantFrom(...kitchenIds), heats, (id, celsius) => {
        const { oven } = kitchen(id);
        const heat = { celsius, highCelsius: null, disagreement: null };
        const [first] = dialSettings(heat, kitchen(id));
        const beyond = beyondDial(heat, kitchen(id));
        expect(first?.beyond ?? null).toBe(beyond?.end ?? null);
        if (beyond !== null) {
          expect(first?.low).toBe(beyond.asked);
          return;
        }
        // All marks of the dial, by looking at each: those of its step, and its ends.
        const steps = Array.from({ length: 100 }, (_, n) => oven.step.times(n));
        const inside = steps.filter((mark) => mark.greaterThan(oven.min) && mark.lessThan(oven.max));
        const marks = [oven.min, ...inside, oven.max];
        const off = (mark: Exact): Exact => celsiusOf(mark, oven.unit).minus(celsius).abs();
        const nearest = marks.reduce((best, mark) => (off(mark).lessThan(off(best)) ? mark : best));
        const set = new Exact(first?.low ?? Number.NaN);
        // Halfway between two marks either will do.
        expect(set.equals(nearest) || off(set).equals(off(nearest)) ? '' : `${celsius} °C is set to ${set}`).toBe('');
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

describe('an oven beyond the dial', () => {
  const us = kitchen('us');
  const beyond = (text: string, to: string): unknown => {
    const heat = ovenHeat(readOven(text), us);
    return heat === null ? null : beyondDial(heat, kitchen(to));
  };

  // Dials: UK, EU and AU 50 to 250 °C by 10, US and Canada 170 to 550 °F by 25 (common practice, no source).
  test.for([
    ['600°F', 'uk', { end: 'hottest', mark: '250', asked: '316', unit: 'C' }],
    ['100°F', 'eu', { end: 'coolest', mark: '50', asked: '38', unit: 'C' }],
    ['900°F', 'ca', { end: 'hottest', mark: '550', asked: '900', unit: 'F' }],
    ['500–550°F', 'au', { end: 'hottest', mark: '250', asked: '288', unit: 'C' }],
    // 260 °C is one step above the end.
    ['500°F', 'uk', null],
    ['350°F', 'uk', null],
    ['550°F', 'us', null],
  ] as const)('%s in %s: %j', ([text, to, found]) => {
    expect(beyond(text, to)).toEqual(found);
  });

  test.for(kitchenIds)('has no setting of the dial in its words, and is read again as the same heat, in %s', (id) => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 400 }), fc.integer({ min: 0, max: 60 }), (celsius, more) => {
        const to = kitchen(id);
        const high = more === 0 ? null : new Exact(celsius + more);
        const heat = { celsius: new Exact(celsius), highCelsius: high, disagreement: null };
        const found = beyondDial(heat, to);
        const said = writeOven(dialSettings(heat, to));
        const again = ovenHeat(readOven(said), to);
        // Half a degree is what whole degrees cost, and at most a step what the dial does.
        const step = to.oven.step.dividedBy(to.oven.unit === 'F' ? 1.8 : 1).toNumber();
        const end = found?.end === 'hottest' ? (again?.highCelsius ?? again?.celsius) : again?.celsius;
        const asked = found?.end === 'hottest' ? (high ?? heat.celsius) : heat.celsius;
        const off = end?.minus(asked).abs().toNumber() ?? Number.NaN;
        expect(again?.disagreement ?? null).toBeNull();
        expect(off).toBeLessThanOrEqual(found === null ? step + 1e-9 : 0.5);
        expect(said.includes('than the dial goes')).toBe(found !== null);
      }),
    );
  });

  test('is a finding of the version, and a caution to its readers', () => {
    const version = versionOf({ kitchen: 'us', lines: ['1 egg'], mentions: [ovenOf('600°F')] }, 'uk');
    expect(version.steps[0]?.mentions.flatMap(rulesOfMention)).toEqual(['oven-beyond-dial']);
    expect(version.cautions).toMatchObject([{ kind: 'oven', text: '600°F', beyond: { asked: '316' } }]);
  });
});
