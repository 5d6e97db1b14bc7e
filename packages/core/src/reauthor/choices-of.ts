import type { Stated, Term } from '../amount/stated.js';
import { statedIn } from '../amount/stated.js';
import { Exact } from '../exact.js';
import type { Sold } from '../food/food.js';
import { isUseWhole, leastLeftGrams, soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Measure } from '../kitchen/measure.js';
import { stateMeasure, tablesFor } from '../version/land.js';
import { wholeEgg } from '../version/weigh-line.js';
import type { Choice, Demand } from './demand.js';
import { isCounted } from './demands-of.js';
import { widestDrift } from './search.js';
import type { Weights } from './weights.js';
import { batchRange } from './weights.js';

/** A demand's choices and, by their index, the amounts that they stand for. */
export interface Offer {
  choices: Choice[];
  stated: Stated[];
  /** Sizes of whole packs and pieces, grams: the batch may be set by them. */
  wholes: number[];
}

/** Everything that a kitchen's tools and shops offer for a demand, at any batch factor that is considered. */
export function offerFor(demand: Demand, kitchen: Kitchen, weights: Weights): Offer {
  const { food } = demand;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (food?.id === wholeEgg && isCounted(demand)) return eggs(demand, kitchen, weights);
  if (demand.base === 'g' && sold !== null && isUseWhole(sold)) return packs(demand, sold);
  if (isCounted(demand) && !isWeighedPiece(demand)) return pieces(demand);
  return measures(demand, sold, kitchen, weights);
}

/** A stick of butter, a can of something that is not used whole. */
function isWeighedPiece({ reading, food, base }: Demand): boolean {
  const unit = reading.amounts[0]?.unit;
  if (base !== 'g') return false;
  return (unit === 'stick' && food?.role === 'fat') || unit === 'can' || unit === 'tin' || unit === 'packet';
}

/** The least and the most that any batch could ask of a demand. */
function span({ quantity }: Demand): { least: number; most: number } {
  const wide = Math.exp(widestDrift);
  return { least: (quantity * batchRange.least) / wide, most: quantity * batchRange.most * wide };
}

function counted(count: Exact, unit: Term['unit'], eggSize: string | null = null): Stated {
  return { statements: [[{ low: count, high: null, unit }]], pack: null, eggSize, approx: false };
}

function eggs(demand: Demand, kitchen: Kitchen, weights: Weights): Offer {
  const { least, most } = span(demand);
  const offer: Offer = { choices: [], stated: [], wholes: [] };
  for (const size of kitchen.eggs.sizes) {
    const grams = size.edibleGrams.toNumber();
    const usual = size.name === kitchen.eggs.usual;
    offer.wholes.push(grams);
    for (let count = Math.max(1, Math.ceil(least / grams)); count * grams <= most; count++) {
      const fixed = usual ? 0 : weights.otherEgg;
      push(
        offer,
        { size: count * grams, grams: count * grams, fixed },
        counted(new Exact(count), 'count', usual ? null : size.name),
      );
    }
  }
  return offer;
}

function packs(demand: Demand, sold: Sold): Offer {
  const { least, most } = span(demand);
  const offer: Offer = { choices: [], stated: [], wholes: [] };
  for (const pack of sold.packs) {
    const step = pack.whole === 'half' ? 0.5 : 1;
    const grams = pack.grams.toNumber();
    offer.wholes.push(grams * step);
    for (let count = Math.max(step, Math.ceil(least / grams / step) * step); count * grams <= most; count += step) {
      const stated = counted(new Exact(count), 'count');
      const label = { size: pack.size, unit: pack.unit as Term['unit'], word: pack.word };
      push(offer, { size: count * grams, grams: count * grams, fixed: 0 }, { ...stated, pack: label });
    }
  }
  return offer;
}

/** Whole pieces, and halves of what an author halves or has two of at most. */
function pieces(demand: Demand): Offer {
  const term = statedIn(demand.reading)?.statements[0]?.[0];
  const offer: Offer = { choices: [], stated: [], wholes: [] };
  if (term === undefined || term.low.isZero()) return offer;
  const native = (term.high === null ? term.low : term.low.times(term.high).sqrt()).toNumber();
  const each = demand.quantity / native;
  const halves = term.unit === 'count' && (native <= 2 || !Number.isInteger(native));
  const step = halves ? 0.5 : 1;
  const { least, most } = span(demand);
  const counts = new Set([native]);
  for (let count = Math.max(step, Math.ceil(least / each / step) * step); count * each <= most; count += step)
    counts.add(count);
  for (const count of [...counts].sort((a, b) => a - b)) {
    const own = count === native;
    const stated = own ? counted(term.low, term.unit) : counted(new Exact(count), term.unit);
    const ranged = own && term.high !== null ? { ...stated, statements: [[{ ...term }]] } : stated;
    push(offer, { size: count * each, grams: count * each * demand.gramsPerBase, fixed: 0 }, ranged);
  }
  return offer;
}

function measures(demand: Demand, sold: Sold | null, kitchen: Kitchen, weights: Weights): Offer {
  const offer: Offer = { choices: [], stated: [], wholes: [] };
  const { least, most } = span(demand);
  const unit = demand.reading.amounts[0]?.unit ?? 'g';
  const pours = demand.food?.pours ?? false;
  const dimension = demand.reading.pack === null && !isCounted(demand) ? dimensionFor(unit) : pours ? 'volume' : 'mass';
  const density =
    demand.need.grams === null || demand.need.millilitres === null || demand.need.millilitres.isZero()
      ? null
      : demand.need.grams.toNumber() / demand.need.millilitres.toNumber();
  const seen = new Set<string>();
  for (const table of tablesFor({ weighed: demand.need, dimension, food: demand.food, byWrapper: false }, kitchen)) {
    for (const measure of table.measures) {
      const size = inBase(measure, demand, density);
      if (size === null || size < least || size > most) continue;
      // The same amount by a second tool is no other choice.
      const key = `${size.toPrecision(12)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const fixed = weights.awkward * measure.awkwardness + leftoverCost(size, demand, sold, weights);
      push(offer, { size, grams: size * demand.gramsPerBase, fixed }, stateMeasure(measure, false));
    }
  }
  return offer;
}

function dimensionFor(unit: Term['unit']): 'mass' | 'volume' {
  return unit === 'g' || unit === 'kg' || unit === 'oz' || unit === 'lb' || unit === 'mg' ? 'mass' : 'volume';
}

/** A measure's size in the base that the demand is counted in. */
function inBase({ base, near }: Measure, demand: Demand, density: number | null): number | null {
  if (base === demand.base) return near;
  if (density === null) return null;
  return demand.base === 'g' ? near * density : near / density;
}

/** What remains of the packs bought, as a share of them, by how it keeps. */
function leftoverCost(size: number, { food, base }: Demand, sold: Sold | null, weights: Weights): number {
  if (food === null || sold === null || base !== 'g' || sold.loose || sold.tap || sold.packs.length === 0) return 0;
  const { where, days, freezes } = food.keeps;
  if (where === 'cupboard' || days === null) return 0;
  const cost = freezes ? weights.leftoverFrozen : days < 7 ? weights.leftoverFresh : 0;
  if (cost === 0) return 0;
  const { bought, left } = leastLeftGrams(size, sold.packs);
  return bought === 0 ? 0 : (cost * left) / bought;
}

function push(offer: Offer, choice: Omit<Choice, 'index'>, stated: Stated): void {
  offer.choices.push({ ...choice, index: offer.stated.length });
  offer.stated.push(stated);
}
