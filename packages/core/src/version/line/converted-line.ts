import type { Exact } from '../../exact.js';
import type { Foods } from '../../food/find/find.js';
import { unweighed } from '../../food/weigh.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { Line } from '../../recipe/recipe.js';
import { type Conversion, convertAmount } from '../convert/convert-amount.js';
import { farOff } from '../judge/far-off.js';
import { judgeLine } from '../judge/judge-line.js';
import { unsaidPack } from '../judge/unsaid-pack.js';
import type { VersionLine } from '../version.js';
import { weighNeed, weighStated } from '../weigh/weigh-line.js';
import { weighingOf } from '../weigh/weighing.js';
import { problemsOfWords, whichSalt } from '../words/about-words.js';
import { furtherInWords } from '../words/further-in-words.js';
import { amountInWords, nameInWords, unconverted } from '../words/words-in-line.js';
import { driftOf } from './drift-of.js';
import { standInLine } from './stand-in-line.js';
import { writtenLine } from './written-line.js';

/**
 * A native line converted for another kitchen; a stand-in takes its place where the food is not sold there. What conversion gives is
 * judged as an author's own amount is. A cure stays as it was written.
 */
export function convertedLine(line: Line, conversion: Conversion, tolerance: Exact, foods: Foods): VersionLine {
  const { native, kitchen, ownWeights } = conversion;
  const { food, reading } = line;
  if (food?.role === 'cure') return { ...writtenLine(line, native, ownWeights, tolerance), bought: null };
  const weighing = weighingOf(reading, food, native, ownWeights);
  const amount = weighNeed(reading, weighing, kitchen);
  const weighed = amount?.low ?? unweighed;
  const standIn = standInLine(line, amount, conversion, tolerance, foods);
  if (standIn !== null) return standIn;
  const stated = convertAmount(reading, food, conversion);
  const chosen =
    weighStated(stated, { ...weighing, kitchen, sizeWord: partOfEgg(food) === null ? weighing.sizeWord : '' })?.low ??
    unweighed;
  const { bought, problems } = judgeLine(line, { stated, weighed: chosen, food }, kitchen, tolerance);
  // An egg to glaze with is an egg.
  const drift = conversion.eggs?.loose.has(reading) ? null : driftOf(weighed, chosen);
  const unsaid = problems.length > 0 ? problems : unsaidPack(line, stated, weighed, kitchen);
  const found = unsaid.length > 0 ? unsaid : farOff(line, drift, stated);
  const edits = [
    ...amountInWords(line, stated, kitchen, { conversion, share: drift?.plus(1) ?? null }),
    ...nameInWords(line, stated, kitchen),
    ...furtherInWords(line, conversion),
  ];
  return {
    line,
    food,
    name: null,
    edits,
    alone: edits,
    also: [],
    stated,
    native: weighed,
    chosen,
    drains: null,
    boughtWith: null,
    portion: chosen,
    drift,
    bought,
    problems: [...problemsOfWords(line, native), ...found, ...unconverted(line, edits, conversion)],
    notes: whichSalt(line, native).length > 0 ? [{ kind: 'lighter-kosher' }] : [],
  };
}
