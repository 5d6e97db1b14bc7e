import type { Span, TemperatureReading } from '../../amount/reading.js';
import { writeTerm } from '../../amount/write.js';
import { beyondDial, ovenHeat } from '../../kitchen/heat/oven.js';
import { inScale, isUnderdone, safeMinimum } from '../../kitchen/heat/safe.js';
import type { Kitchen, SafeTemperature } from '../../kitchen/kitchen.js';
import type { Mention } from '../../recipe/recipe.js';
import type { Problem } from '../problem.js';
import type { Edit, PlacedProblem } from '../version.js';
import { applyEdits } from '../words/edit.js';

/** The scale of a temperature: where its letter is left out, that of the kitchen where it was written. */
export function unitOf(reading: TemperatureReading, native: Kitchen): 'C' | 'F' {
  return reading.impliedUnit ? native.writes.temperature : reading.unit;
}

function placed(mention: Mention, problem: Problem): PlacedProblem {
  return { problem, span: { start: 0, end: mention.text.length } };
}

/** What is wrong with an annotation wherever it is cooked. */
export function aboutWords(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  return [...underdone(mention, kitchen), ...disagreeing(mention, kitchen), ...unread(mention)];
}

/** An oven that cannot be set so has the heat itself in its text, and never the end of its dial in silence. */
export function outOfDial(mention: Mention, native: Kitchen, kitchen: Kitchen): PlacedProblem[] {
  const heat = mention.kind === 'oven' ? ovenHeat(mention.settings, native) : null;
  const beyond = heat === null ? null : beyondDial(heat, kitchen);
  return beyond === null ? [] : [placed(mention, { rule: 'oven-beyond-dial', text: mention.text, beyond })];
}

/** Never lifted in silence: the author has to write the safe temperature. */
function underdone(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  if (mention.kind !== 'core' || mention.class === null) return [];
  const minimum = safeMinimum(kitchen, mention.class);
  if (minimum === null) return [];
  const low = mention.readings.filter((reading) => isUnderdone(reading.low, unitOf(reading, kitchen), minimum));
  const [first] = low;
  if (first === undefined) return [];
  // Of two statements of one heat, `160°F (71°C)`, only one may be too low.
  const text = low.length === mention.readings.length ? mention.text : wordsOf(first, mention);
  const write = applyEdits(
    mention.text,
    low.map((reading) => safeInstead(reading, minimum, kitchen)),
  );
  return [placed(mention, { rule: 'underdone', text, unit: unitOf(first, kitchen), minimum, write })];
}

/** The minimum in the scale that a statement is in, rounded up. */
function safeInstead(reading: TemperatureReading, minimum: SafeTemperature, kitchen: Kitchen): Edit {
  const unit = unitOf(reading, kitchen);
  const low = inScale(minimum.temperature, minimum.unit, unit).ceil();
  const high = reading.high?.greaterThan(low) === true ? reading.high : null;
  return { ...reading.span, text: writeTerm({ low, high, unit }) };
}

function wordsOf({ span }: { span: Span }, { text }: Mention): string {
  return text.slice(span.start, span.end).trim();
}

function disagreeing(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  if (mention.kind !== 'oven') return [];
  const heat = ovenHeat(mention.settings, kitchen);
  if (heat?.disagreement == null) return [];
  const { first, second } = heat.disagreement;
  return [
    placed(mention, {
      rule: 'oven-disagrees',
      text: mention.text,
      first: wordsOf(first, mention),
      second: wordsOf(second, mention),
    }),
  ];
}

function unread(mention: Mention): PlacedProblem[] {
  if (mention.kind !== 'amount' || mention.reading.doubt === null) return [];
  const { text, because, instead } = mention.reading.doubt;
  return [placed(mention, { rule: 'unreadable-amount', text, because, instead })];
}
