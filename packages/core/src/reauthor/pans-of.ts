import { centimetresIn } from '../amount/size.js';
import { Exact } from '../exact.js';
import type { Kitchen, Pan } from '../kitchen/kitchen.js';
import { isMuffin } from '../kitchen/pan/muffin-pan.js';
import { byRim, type PanOffer, pansLike, saidRim } from '../kitchen/pan/pan.js';
import { baseOf, isSameArea } from '../kitchen/pan/pan-base.js';
import { writePanSize } from '../kitchen/pan/pan-size.js';
import type { Recipe } from '../recipe/recipe.js';
import type { ChosenPan } from '../version/build-version.js';
import { depthCaution } from '../version/cautions.js';
import { carriesBatch, type PanMention, panCount } from '../version/words/pan-in-words.js';
import type { Weights } from './weights.js';

type PanWeights = Pick<Weights, 'pan' | 'otherPans'>;

/** A usual pan that may be chosen. */
interface PanOption extends Omit<PanOffer, 'areaRatio'> {
  /** Its base over that of the written pan. */
  areaRatio: number;
  areaDrift: Exact;
}

/** The pans that a kitchen offers for one that is written. */
export interface PanDemand {
  mention: PanMention;
  /** All annotations of that pan. */
  mentions: PanMention[];
  /** How many of it the author uses. */
  count: number;
  /** A joint is roasted in one pan, whatever its size, and no half of it in another. */
  isRoasting: boolean;
  /** Rim depth of the author's pan in centimetres; null where it is not known. */
  depth: number | null;
  offers: PanOption[];
}

/** A pan and its number, chosen for a batch. */
export interface PanChosen {
  demand: PanDemand;
  offer: PanOption;
  count: number;
  cost: number;
}

/** What a cook does to the pan that the batch is baked in. */
const fills =
  /\b(?:bak(?:e|es|ed|ing)|roast(?:s|ed|ing)?|pour(?:s|ed|ing)?|fill(?:s|ed|ing)?|press(?:es|ed|ing)?|scrap(?:e|es|ed|ing)|spread(?:s|ing)?|lin(?:e|es|ed|ing)|greas(?:e|es|ed|ing)|butter(?:s|ed|ing)?|transfer(?:s|red|ring)?|divid(?:e|es|ed|ing)|spoon(?:s|ed|ing)?|turn(?:s|ed|ing)?|oven|cake|loaf)\b/i;

/**
 * The pan that the batch is baked in: of several the one whose step fills and bakes it, the first where no step says so. None where its
 * base is not known, or where the kitchen has none of its shape and near its size; others keep the nearest size.
 */
export function pansOf(recipe: Recipe, native: Kitchen, kitchen: Kitchen): PanDemand[] {
  const found = recipe.steps.flatMap(({ native: method }) =>
    method.mentions
      .filter((mention): mention is PanMention => mention.kind === 'pan' && carriesBatch(mention))
      .map((mention) => {
        const sentence = sentenceOf(mention.text, method.prose);
        return { mention, fills: fills.test(sentence), isRoasting: roasting.test(sentence) };
      }),
  );
  const chosen = found.find((each) => each.fills) ?? found[0];
  if (chosen === undefined) return [];
  const { mention, isRoasting } = chosen;
  const depth = isMuffin(mention.reading) ? null : depthOf(mention, native);
  const rim = depth === null ? null : new Exact(depth);
  const offers = byRim(pansLike(mention.reading, native, kitchen), rim).map((offer) => ({
    ...offer,
    areaRatio: offer.areaRatio.toNumber(),
    areaDrift: offer.areaRatio.minus(1),
  }));
  const near = offers.filter(
    ({ areaRatio, pan }) =>
      isNear(areaRatio, panCount(mention), isRoasting) && !(isRoasting && isShallow(rimOf(pan), depth)),
  );
  const mentions = found.map((each) => each.mention).filter((each) => isSamePan(each, mention, native));
  return near.length === 0 ? [] : [{ mention, mentions, count: panCount(mention), isRoasting, depth, offers: near }];
}

/** What no number of pans near the author's brings nearer than this bakes something else: a tart tin is no tartlet tin. */
const nearestBase = 0.6;

/** What is roasted in a pan is no batter. */
const roasting = /\broasting (?:dish|pan|tin|tray)/i;

/** Juices run over the rim of a baking sheet. */
function isShallow(rim: number | null, depth: number | null): boolean {
  return rim !== null && depth !== null && rim < depth * roastingBase;
}

/** A joint has to lie in it: a pan whose base is under three quarters of the author’s is no other one. Common practice, no source. */
const roastingBase = 0.75;

function isNear(areaRatio: number, count: number, isRoasting: boolean): boolean {
  if (isRoasting) return areaRatio >= roastingBase && areaRatio <= 1 / roastingBase;
  const bases = [count - 1, count, count + 1].map((each) => (areaRatio * each) / count);
  return bases.some((base) => base >= nearestBase && base <= 1 / nearestBase);
}

/** `Butter a 9-inch springform … pour into the 9-inch pan`: one pan, which another takes the place of throughout. */
function isSamePan(one: PanMention, other: PanMention, native: Kitchen): boolean {
  const [ours, theirs] = [one, other].map(({ reading }) => {
    const base = baseOf(reading, native);
    const sides = base?.sides.map((side) => side.toDecimalPlaces(3)) ?? [reading.unit, reading.capacity ?? ''];
    return sides.join(' ');
  });
  return ours === theirs;
}

/** The chosen pans by the keys of their annotations. One that names another number (`each 8-inch pan`) keeps it. */
export function pansByMention(pans: readonly PanChosen[]): ReadonlyMap<string, ChosenPan> {
  const chosen = pans.flatMap(({ demand, offer: { pan, text, areaDrift }, count }) =>
    demand.mentions.map((mention): [string, ChosenPan] => {
      const own = panCount(mention);
      const { longFirst, sides } = mention.reading;
      const turned = text !== null && longFirst !== demand.mention.reading.longFirst;
      const size = turned ? writePanSize(pan, sides.length, longFirst) : text;
      return [mention.key, { pan, text: size, areaDrift, count: own === demand.count ? count : own }];
    }),
  );
  return new Map(chosen);
}

function sentenceOf(words: string, prose: string): string {
  const at = prose.indexOf(words);
  if (at < 0) return '';
  const start = Math.max(prose.lastIndexOf('. ', at), prose.lastIndexOf('\n', at)) + 1;
  const ends = [prose.indexOf('. ', at + words.length), prose.indexOf('\n', at)].filter((end) => end >= 0);
  return prose.slice(start, Math.min(prose.length, ...ends));
}

/** As it is written, else that of the native kitchen's usual pan of that size. */
function depthOf({ reading, depth }: PanMention, native: Kitchen): number | null {
  const stated = saidRim(reading, depth);
  if (stated !== null) return stated.toNumber();
  const usual = pansLike(reading, native, native).filter(({ areaRatio }) => isSameArea(areaRatio));
  const said = usual.find(({ pan: { name } }) => reading.rim !== null && name.includes(reading.rim)) ?? usual[0];
  return said === undefined ? null : rimOf(said.pan);
}

function rimOf({ depth, unit }: Pan): number | null {
  return depth === null ? null : depth.times(centimetresIn(unit)).toNumber();
}

/** A batter or filling stands at most this high in its pan. Common practice, no source. */
const filledTo = 2 / 3;
/**
 * The pan and number whose base is nearest to the batch's. The author's number is kept unless every pan would then be over a tenth too
 * deep or too shallow and one pan more or less comes so much nearer that it is worth another number of layers. A rim has to hold the
 * batch; it carries none of it.
 */
export function bestPan(demand: PanDemand, batch: number, weights: PanWeights): PanChosen {
  const kept = nearestWith(demand, [demand.count], batch, weights);
  if (kept !== null && Math.abs(depthDriftOf(kept, batch)) <= depthCaution) return kept;
  const others = demand.isRoasting ? [] : [demand.count + 1, demand.count - 1];
  const other = nearestWith(demand, others, batch, weights);
  const best = kept !== null && (other === null || kept.cost <= other.cost) ? kept : other;
  if (best !== null) return best;
  const offer = demand.offers[0];
  if (offer === undefined) throw new RangeError('A pan without offers.');
  return { demand, offer, count: demand.count, cost: costOf(demand, offer, demand.count, batch, weights) };
}

/** Depth of the batter over the native depth, less one. Of a larger batch more muffins are baked, not deeper ones. */
export function depthDriftOf({ demand, offer, count }: PanChosen, batch: number): number {
  if (isMuffin(demand.mention.reading)) return 1 / offer.areaRatio - 1;
  return (batch * demand.count) / (offer.areaRatio * count) - 1;
}

function nearestWith(
  demand: PanDemand,
  counts: readonly number[],
  batch: number,
  weights: PanWeights,
): PanChosen | null {
  let best: PanChosen | null = null;
  for (const offer of demand.offers) {
    for (const count of counts) {
      if (count < 1 || !holds(demand, offer, count, batch)) continue;
      const cost = costOf(demand, offer, count, batch, weights);
      if (best === null || cost < best.cost - 1e-12) best = { demand, offer, count, cost };
    }
  }
  return best;
}

function costOf(demand: PanDemand, offer: PanOption, count: number, batch: number, weights: PanWeights): number {
  const drift = Math.log((offer.areaRatio * count) / (demand.count * batch));
  return weights.pan * drift * drift + (weights.otherPans * 2 * Math.abs(count - demand.count)) / demand.count;
}

function holds(
  { depth, count: native }: PanDemand,
  { pan, areaRatio }: PanOption,
  count: number,
  batch: number,
): boolean {
  const rim = rimOf(pan);
  return depth === null || rim === null || rim >= (filledTo * depth * batch * native) / (areaRatio * count);
}
