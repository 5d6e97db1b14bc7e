import { readingIn, readLine } from '../amount/read-line.js';
import { type Stated, statedIn } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import { Exact } from '../exact.js';
import type { Food } from '../food/food.js';
import { isUseWhole, soldIn } from '../kitchen/buy.js';
import { partOfEgg } from '../kitchen/egg.js';
import type { Line, Recipe } from '../recipe/recipe.js';
import { amountEdits, applyEdits } from '../version/edit.js';
import { anchorLine } from './anchor-line.js';
import type { Change } from './change.js';
import type { GuardedRatio } from './constraint.js';
import type { Demand } from './demand.js';
import { planPart } from './part-plan.js';
import { isFeasible, type Searched, type SearchInput, searchRecipe } from './search-recipe.js';

/** What stands in the way, as far as it can be changed. */
export interface InTheWay {
  /** Lines that cannot be had, or not near enough. */
  lines: readonly Line[];
  /** Ratios that are bent, with the demands on their sides. */
  ratios: readonly { ratio: GuardedRatio; part: string | null; demands: readonly Demand[]; limit: number }[];
}

/** A change with how much it asks of an author, and how it is made. */
interface Candidate {
  change: Change;
  /**
   * What is asked of the author, the least first. A change of a native amount counts by its logarithm and a wider limit by its width, so
   * that a tenth more milk is as much as a limit of 15 % for one of 5 %. The others stand at fixed places between: a weight that is only
   * added changes nothing of the dish, another food a good deal, a line written by hand is what is left.
   */
  asks: number;
  make(input: SearchInput): SearchInput;
}

const asks = { weight: 0.05, noAnchor: 0.1, halfPack: 0.2, anchor: 0.3, packSize: 0.4, food: 0.5, ownVersion: 1 };

/** No version is worth more searches than this. */
const mostTried = 120;

/**
 * The least that an author could change so that there is a version: every change is tried, the least first, and the first that helps is
 * it. Where several lines stand in the way, a change for each.
 *
 * @returns Empty where nothing of the kind helps.
 */
export function leastChange(searched: Searched, inTheWay: InTheWay): Change[] {
  const { input } = searched;
  const all = candidatesFor(searched, inTheWay);
  const one = firstThatHelps(all, input);
  if (one !== null) return [one.change];
  if (inTheWay.lines.length < 2) return [];
  const each = inTheWay.lines.map((line) => {
    const others = inTheWay.lines.filter((other) => other !== line);
    const own = all.filter(({ change }) => 'line' in change && change.line === line);
    return firstThatHelps(own, without(input, others));
  });
  const found = each.flatMap((candidate) => candidate ?? []);
  const helps = found.length === each.length && helpsWith(found.reduce((made, { make }) => make(made), input));
  return helps ? found.map(({ change }) => change) : [];
}

function firstThatHelps(candidates: readonly Candidate[], input: SearchInput): Candidate | null {
  const sorted = [...candidates].sort((a, b) => a.asks - b.asks);
  // What is left to write by hand is tried however many were.
  const tried = [
    ...sorted.slice(0, mostTried),
    ...sorted.slice(mostTried).filter(({ change }) => change.kind === 'own-version'),
  ];
  return tried.find(({ make }) => helpsWith(make(input))) ?? null;
}

function helpsWith(input: SearchInput): boolean {
  const searched = searchRecipe(input);
  return searched !== null && isFeasible(searched);
}

function candidatesFor(searched: Searched, { lines, ratios }: InTheWay): Candidate[] {
  const inRatios = ratios.flatMap(({ ratio, demands }) =>
    demands.filter((_, at) => (ratio.numerator[at] ?? 0) > 0 || (!ratio.ofWhole && (ratio.denominator[at] ?? 0) > 0)),
  );
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

/** A dish with half as much again of something is another dish. */
const widestChange = Math.log(1.5);
/** Amounts nearer together than this, as logarithms, are as good as one. */
const sameAmount = 0.02;
const mostAmounts = 16;

/** Other amounts that the native kitchen measures or buys of a line, the nearest first. */
function otherAmounts(line: Line, { context }: Searched): Candidate[] {
  const { recipe, native } = context;
  const part = recipe.parts.find((each) => each.native.lines.includes(line));
  if (part === undefined || line.food?.role === 'cure') return [];
  const plan = planPart(part, { ...context, kitchen: native });
  const demand = plan.demands.find(({ lines }) => lines[0] === line && lines.length === 1);
  if (demand === undefined) return [];
  const own = Math.log(demand.quantity);
  const far = ({ log }: { log: number }): number => Math.abs(log - own);
  const kept: Demand['choices'] = [];
  for (const choice of [...demand.choices].sort((a, b) => far(a) - far(b))) {
    if (far(choice) > widestChange || kept.length === mostAmounts) break;
    if (far(choice) > sameAmount && kept.every(({ log }) => Math.abs(log - choice.log) > sameAmount)) kept.push(choice);
  }
  return kept.flatMap((choice) => {
    const to = demand.state(choice.index);
    // Another number of eggs can be written for theirs; another size stands elsewhere in the line.
    const changed = to.eggSize === null ? restated(line, to, context) : null;
    if (changed === null) return [];
    const change: Change = { kind: 'native-amount', line, to, text: writeStated(to, native) };
    return [{ change, asks: far(choice), make: (made: SearchInput) => withLine(made, changed) }];
  });
}

/** A line with another amount; null where it would not be read so. */
function restated(line: Line, to: Stated, { native }: Searched['context']): Line | null {
  const text = applyEdits(line.text, amountEdits(line.reading, writeStated(to, native)));
  const reading = readLine(text, readingIn(native));
  return statedIn(reading) === null || reading.doubt !== null ? null : { ...line, text, reading };
}

/** Packs of a food come down to about a third of the smallest that the larder lists. Common practice, no source. */
const smallestPack = 3;

/** Half packs of what comes whole, and a pack of the size that is asked for. */
function otherPacks(line: Line, { context, plans }: Searched): Candidate[] {
  const { kitchen } = context;
  const demand = plans.flatMap(({ demands }) => demands).find(({ lines }) => lines.includes(line));
  const food = demand?.food ?? null;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (demand === undefined || food === null || sold === null || !isUseWhole(sold) || partOfEgg(food) !== null)
    return [];
  const halved = { ...sold, packs: sold.packs.map((pack) => ({ ...pack, whole: 'half' as const })) };
  const unit = kitchen.counter.unit === 'lb' ? 'oz' : 'g';
  const grams = new Exact(demand.quantity);
  const size = (unit === 'oz' ? grams.dividedBy('28.349523125') : grams).toSignificantDigits(2);
  const [like] = sold.packs;
  // A shop that sells tins may have a smaller one, but none with a spoonful in it.
  const isLikely = like !== undefined && grams.greaterThanOrEqualTo(like.grams.dividedBy(smallestPack));
  const own = !isLikely ? [] : [{ ...like, size, unit, grams, drainedGrams: null, marks: null } as const];
  const packs = [...sold.packs, ...own].sort((a, b) => a.grams.comparedTo(b.grams));
  const with_ = (other: typeof sold): Food => ({ ...food, sold: { ...food.sold, [kitchen.id]: other } });
  const isHalved = sold.packs.every((pack) => pack.whole === 'half');
  return [
    ...(isHalved
      ? []
      : [
          {
            change: { kind: 'half-pack', line, food } as const,
            asks: asks.halfPack,
            make: (made: SearchInput) => withFood(made, with_(halved)),
          },
        ]),
    ...(own.length === 0
      ? []
      : [
          {
            change: { kind: 'pack-size', line, food, size, unit } as const,
            asks: asks.packSize,
            make: (made: SearchInput) => withFood(made, with_({ ...sold, packs })),
          },
        ]),
  ];
}

/** For what is not sold: a weight that lets its stand-in be measured, or a food of the kind that is sold. */
function otherFoods(line: Line, { unsold, context }: Searched): Candidate[] {
  const own = unsold.find((each) => each.line === line);
  if (own === undefined) return [];
  const { food } = own;
  if (own.because === 'no-weight') {
    const weighed = restated(line, gramsOf(100), context);
    const change: Change = { kind: 'weight', line, food };
    return weighed === null
      ? []
      : [{ change, asks: asks.weight, make: (made: SearchInput) => withLine(made, weighed) }];
  }
  return soldLike(food, context).map((instead, at) => ({
    change: { kind: 'food', line, food, instead },
    asks: asks.food + at / 100,
    make: (made) => withLine(made, { ...line, food: instead }),
  }));
}

function gramsOf(low: number): Stated {
  const term = { low: new Exact(low), high: null, unit: 'g' } as const;
  return { statements: [[term]], pack: null, eggSize: null, approx: false };
}

const mostFoods = 3;

/**
 * Foods that the kitchen sells and that are like another: those that the larder lets take the same food's place, then those of its role
 * that share words with its names, most words first.
 */
function soldLike(food: Food, { kitchen, foods }: Searched['context']): Food[] {
  const own = wordsOf(food);
  const all = [...foods.values()];
  const beside = all.flatMap((other) => placesSharedWith(food, other));
  const others = new Set(beside.flatMap(({ others: each }) => each));
  const places = new Set(beside.map(({ place }) => place));
  return all
    .filter((other) => other.id !== food.id && other.role !== 'cure' && soldIn(other, kitchen.id)?.sold === true)
    .map((other) => {
      const shared = other.role === food.role ? [...wordsOf(other)].filter((word) => own.has(word)).length : 0;
      const known = others.has(other.id) ? 2 * mostWords : places.has(other.id) ? mostWords : 0;
      return { other, shared: known + shared };
    })
    .filter(({ shared }) => shared > 0)
    .sort((a, b) => b.shared - a.shared)
    .slice(0, mostFoods)
    .map(({ other }) => other);
}

/** More than any two foods have in common. */
const mostWords = 1000;

/** Where a food is one of several that may take another's place by themselves: that place, and the others. */
function placesSharedWith(food: Food, other: Food): { place: string; others: string[] }[] {
  return Object.values(other.sold).flatMap(({ standIns }) => {
    const alone = standIns.flatMap(({ parts }) => (parts.length === 1 ? parts.map((part) => part.food) : []));
    return alone.includes(food.id) ? [{ place: other.id, others: alone }] : [];
  });
}

function wordsOf({ id, names }: Food): Set<string> {
  const all = [id.replaceAll('-', ' '), ...Object.values(names).flatMap((list) => list.map(({ one }) => one))];
  return new Set(all.flatMap((name) => name.toLowerCase().split(/[^\p{L}]+/u)).filter((word) => word.length > 3));
}

/** A line that the version leaves to its author. */
function byHand(line: Line): Candidate[] {
  const change: Change = { kind: 'own-version', line, food: line.food };
  return [{ change, asks: asks.ownVersion, make: (made) => without(made, [line]) }];
}

function withLine(input: SearchInput, line: Line): SearchInput {
  const recipe = mapLines(input.recipe, (each) => (each.key === line.key ? [line] : [each]));
  return { ...input, recipe };
}

function without(input: SearchInput, lines: readonly Line[]): SearchInput {
  const keys = new Set(lines.map(({ key }) => key));
  const recipe = mapLines(input.recipe, (each) => (keys.has(each.key) ? [] : [each]));
  const isGone = input.anchor !== null && anchorLine(input.anchor, lines) !== null;
  return { ...input, recipe, anchor: isGone ? null : input.anchor };
}

function withFood(input: SearchInput, food: Food): SearchInput {
  const recipe = mapLines(input.recipe, (each) => [each.food?.id === food.id ? { ...each, food } : each]);
  return { ...input, recipe, foods: new Map([...input.foods, [food.id, food]]) };
}

function mapLines(recipe: Recipe, change: (line: Line) => Line[]): Recipe {
  const parts = recipe.parts.map((part) => ({
    ...part,
    native: { ...part.native, lines: part.native.lines.flatMap(change) },
  }));
  return { ...recipe, parts };
}
