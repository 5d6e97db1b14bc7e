import type { TemperatureReading } from '../../amount/reading.js';
import { writeTerm } from '../../amount/write.js';
import { beyondDial, ovenHeat } from '../../kitchen/heat/oven.js';
import { coreFor, isUnderdone, safeMinimum } from '../../kitchen/heat/safe.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Mention } from '../../recipe/recipe.js';
import type { Problem } from '../problem.js';
import type { PlacedProblem } from '../version.js';

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
  const low = mention.readings.find((reading) => isUnderdone(reading.low, unitOf(reading, kitchen), minimum));
  if (low === undefined) return [];
  const safe = coreFor(minimum.temperature, minimum.unit, kitchen, mention.class);
  const write = writeTerm({ low: safe.value, high: null, unit: safe.unit });
  return [placed(mention, { rule: 'underdone', text: mention.text, minimum, write })];
}

function disagreeing(mention: Mention, kitchen: Kitchen): PlacedProblem[] {
  if (mention.kind !== 'oven') return [];
  const heat = ovenHeat(mention.settings, kitchen);
  if (heat?.disagreement == null) return [];
  const { first, second } = heat.disagreement;
  const words = ({ span }: typeof first): string => mention.text.slice(span.start, span.end).trim();
  return [placed(mention, { rule: 'oven-disagrees', text: mention.text, first: words(first), second: words(second) })];
}

function unread(mention: Mention): PlacedProblem[] {
  if (mention.kind !== 'amount' || mention.reading.doubt === null) return [];
  const { text, because, instead } = mention.reading.doubt;
  return [placed(mention, { rule: 'unreadable-amount', text, because, instead })];
}
