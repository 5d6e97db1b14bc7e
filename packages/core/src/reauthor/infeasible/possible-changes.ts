import { stateOne } from '../../amount/stated.js';
import { Exact } from '../../exact.js';
import { allergensAdded } from '../../food/allergens.js';
import type { Line } from '../../recipe/recipe.js';
import { type GuardedRatio, guards } from '../ratio/constraint.js';
import type { Demand } from '../search/demand.js';
import { type Searched, type SearchInput, searchRecipe } from '../search/search-recipe.js';
import { asks, type Candidate, restated } from './candidate-change.js';
import type { Change } from './change.js';
import { withLine, without } from './changed-input.js';
import { otherAmounts } from './other-amounts.js';
import { otherPacks } from './other-packs.js';
import { soldLike } from './sold-like.js';

/** What stands in the way, as far as it can be changed. */
export interface InTheWay {
  /** Lines that cannot be had, or not near enough. */
  lines: readonly Line[];
  /** Ratios that are bent, with the demands on their sides. */
  ratios: readonly { ratio: GuardedRatio; part: string | null; demands: readonly Demand[]; limit: number }[];
}

/** Every change that an author could make to what stands in the way. */
export function candidatesFor(searched: Searched, { lines, ratios }: InTheWay): Candidate[] {
  const inRatios = ratios.flatMap(({ ratio, demands }) => demands.filter((_, at) => guards(ratio, at)));
  const touched = [...new Set([...lines, ...inRatios.flatMap((demand) => demand.lines)])];
  return [
    ...anchors(searched),
    ...ratios.flatMap((each) => widerLimits(each)),
    ...touched.flatMap((line) => [...otherAmounts(line, searched), ...otherPacks(line, searched)]),
    ...lines.flatMap((line) => [...otherFoods(line, searched), ...byHand(line)]),
  ];
}

/** No anchor, where one is named; each food that comes whole, where none is. */
function anchors({ input, free, plans }: Searched): Candidate[] {
  const named = (anchor: string | null, asked: number, batchFactor: number): Candidate => ({
    change: { kind: 'anchor', anchor, batchFactor },
    asks: asked,
    make: (made) => ({ ...made, anchor }),
  });
  const none = input.anchor !== null && free.best !== null ? [named(null, asks.noAnchor, free.best.batch.factor)] : [];
  const whole = plans
    .flatMap(({ demands }) => demands)
    .filter(({ wholes, weight }) => wholes.length > 0 && weight > 0)
    .flatMap(({ lines }) => lines[0]?.reading.food?.text ?? [])
    .filter((name) => name !== input.anchor);
  return [
    ...none,
    ...[...new Set(whole)].flatMap((name) => {
      const factor = searchRecipe({ ...input, anchor: name })?.solved.best?.batch.factor;
      return factor === undefined ? [] : [named(name, asks.anchor + Math.abs(Math.log(factor)) / 2, factor)];
    }),
  ];
}

/** A wider limit is worth naming only as far as twice the limit. */
const wider = [1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2];

function widerLimits({ ratio, part, limit: from }: InTheWay['ratios'][number]): Candidate[] {
  return wider.map((times): Candidate => {
    // In tenths of a percent, upward: what is written has to be enough.
    const limit = Math.ceil(from * times * 1000 - 1e-9) / 1000;
    return {
      change: { kind: 'limit', key: ratio.key, name: ratio.name, part, from, limit },
      asks: limit - from,
      make: (made) => ({
        ...made,
        weights: { ...made.weights, limits: { ...made.weights.limits, [ratio.key]: limit } },
      }),
    };
  });
}

/** For what is not sold: a weight that lets its stand-in, or its packs, be counted out, or a food of the kind that is sold. */
function otherFoods(line: Line, searched: Searched): Candidate[] {
  const { unsold, context } = searched;
  const own = unsold.find((each) => each.line === line);
  if (own === undefined) return [];
  const { food } = own;
  if (own.because !== 'no-stand-in') {
    const grams = own.because === 'whole-packs' ? asWater(line, searched) : aWeight;
    const weighed = restated(line, stateOne({ low: grams, high: null, unit: 'g' }), context);
    const change: Change = { kind: 'weight', line, food, grams };
    return weighed === null
      ? []
      : [{ change, asks: asks.weight, make: (made: SearchInput) => withLine(made, weighed) }];
  }
  return soldLike(food, context).map((instead, at) => ({
    change: { kind: 'food', line, food, instead, allergens: allergensAdded(food, [instead], context.foods) },
    asks: asks.food + at / 100,
    make: (made) => withLine(made, { ...line, food: instead }),
  }));
}

/** Any weight lets what takes a food's place be measured. */
const aWeight = new Exact(100);

/** Whole packs have to come near to the weight: what is not known is taken to be as heavy as water. Common practice, no source. */
function asWater(line: Line, { plans }: Searched): Exact {
  const demand = plans.flatMap(({ demands }) => demands).find(({ lines }) => lines.includes(line));
  return demand?.need.millilitres?.toSignificantDigits(2) ?? aWeight;
}

/** A line that the version leaves to its author. */
function byHand(line: Line): Candidate[] {
  const change: Change = { kind: 'own-version', line, food: line.food };
  return [{ change, asks: asks.ownVersion, make: (made) => without(made, [line]) }];
}
