import type { LineReading } from '../../amount/reading.js';
import { gramsIn, isMassUnit } from '../../amount/size.js';
import type { Affix, Measured } from '../find/speech.js';
import { comesIn, isLoose, isOnlyTinned, isRaw } from '../find/traits.js';
import { saidOfFood } from './said-of-food.js';

const wrappers = new Set(['can', 'tin', 'jar']);
const spoons = new Set(['tsp', 'tbsp']);
const greens = new Set(['bunch', 'sprig', 'handful']);

const canned: Affix = { before: 'canned ', after: '' };
const powder: Affix = { before: '', after: ' powder' };
// Coriander by the bunch, or chopped, is the herb, where the bare word may be the spice.
const fresh: Affix = { before: 'fresh ', after: '', role: 'seasoning' };
const cube: Affix = { before: '', after: ' cube' };
const whole: Affix = { before: 'whole ', after: '' };

/**
 * What the measure of a line makes of its food's words: `canned …` in a can, `whole …` or `… cube` where one is counted, `… powder`
 * of bouillon by the spoon.
 *
 * @returns One after the other to be tried.
 */
export function asMeasured(reading: LineReading): Measured[] {
  const { amounts, pack, food, text } = reading;
  const unit = amounts[0]?.unit ?? '';
  const unmeasured = amounts.length === 0;
  const before = text.slice(0, food?.span.start);
  const measured = (affixes: Affix[], refuses: Measured['refuses'] = () => false): Measured[] => [
    { affixes, refuses, unmeasured },
  ];
  if (
    wrappers.has(unit) ||
    wrappers.has(pack?.word ?? '') ||
    /\b(?:canned|tinned|jarred)\b/i.test(saidOfFood(reading))
  ) {
    // `1 can chicken` is not the chicken of the counter.
    return measured([canned], (each) => (isRaw(each) || isLoose(each)) && !comesIn(each, 'can', 'tin', 'jar'));
  }
  if (spoons.has(unit) && /bouillon/i.test(food?.text ?? '')) return measured([powder]);
  const said = saidOfFood(reading);
  if (greens.has(unit) || (/\b(?:chopped|snipped|torn|leaves)\b/i.test(said) && !/\bdr(?:y|ied)\b/i.test(said)))
    return measured([fresh]);
  // A stick of cinnamon, a sheet of gelatin, an ear of corn.
  const shape = shapeOf(unit, before);
  // An ear of very fresh corn is still an ear.
  if (shape !== null)
    return [...measured([shape]).map((each) => ({ ...each, onlyAffixed: true })), ...measured([shape])];
  if (unit !== 'count') return measured([]);
  // In `1 glass of milk` the glass is counted.
  const affixes = pack === null && !/\p{L}{3}/u.test(before) ? [cube, whole] : isLarge(pack) ? [whole] : [];
  // `4 chopped tomatoes` are not those of a tin, though sardines are counted out of one.
  return [...measured(affixes, (each) => each.role === 'bulk' && isOnlyTinned(each)), ...measured(affixes)];
}

/** `1 (4-lb) chicken` is the whole bird: no piece of one weighs so much. Common practice, no source. */
const largest = 900;

function isLarge(pack: LineReading['pack']): boolean {
  return pack !== null && pack.word === '' && isMassUnit(pack.unit) && pack.size.times(gramsIn(pack.unit)).gte(largest);
}

/** Words for the thing counted, with what they add to the food's name. */
const shapes: readonly (readonly [RegExp, Affix])[] = [
  [/\bears?\b/i, { before: 'ear ', after: '' }],
  [/\bsheets?\b/i, { before: '', after: ' sheet' }],
  [/\b(?:leaf|leaves)\b/i, { before: '', after: ' leaf' }],
  [/\bpods?\b/i, { before: '', after: ' pods' }],
  [/\bcubes?\b/i, cube],
  [/\bbags?\b/i, { before: '', after: ' bag' }],
  [/\bballs?\b/i, { before: '', after: ' ball' }],
];

/** The word for the thing counted that may be part of the food's name: `stick`, `sheet`, `leaf`, `ear`, `pod`. */
function shapeOf(unit: string, before: string): Affix | null {
  // An inch of cinnamon is one of its stick.
  if (unit === 'stick' || unit === 'in' || unit === 'cm') return { before: '', after: ' stick' };
  return shapes.find(([word]) => word.test(before))?.[1] ?? null;
}
