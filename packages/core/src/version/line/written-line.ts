import { statedIn } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import { type StatedWeights, unweighed } from '../../food/weigh.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import { judgeEggSize } from '../judge/judge-egg-size.js';
import { judgeLine } from '../judge/judge-line.js';
import type { VersionLine } from '../version.js';
import { weighReading } from '../weigh/weigh-line.js';
import { weighingOf } from '../weigh/weighing.js';
import { problemsOfWords } from '../words/about-words.js';

/**
 * A line as an author wrote it for a kitchen, judged there.
 *
 * @param tolerance How far its amount may be from a measure, as a fraction.
 */
export function writtenLine(line: Line, kitchen: Kitchen, ownWeights: StatedWeights, tolerance: Exact): VersionLine {
  const { food, reading } = line;
  const stated = statedIn(reading);
  const weighed = weighReading(reading, weighingOf(reading, food, kitchen, ownWeights))?.low ?? unweighed;
  const { bought, problems } = judgeLine(line, { stated, weighed, food }, kitchen, tolerance);
  return {
    line,
    food,
    name: null,
    edits: [],
    alone: [],
    also: [],
    stated,
    native: weighed,
    chosen: weighed,
    drains: null,
    boughtWith: null,
    portion: weighed,
    drift: null,
    bought,
    problems: [...problemsOfWords(line, kitchen), ...judgeEggSize(line, kitchen), ...problems],
    notes: food?.role === 'cure' ? [{ kind: 'as-written' }] : [],
  };
}
