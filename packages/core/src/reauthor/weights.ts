/** What a re-authored version is weighed by. Every number is a setting; these are the defaults. */
export interface Weights {
  /** Weight of a line's squared drift: in a guarded ratio, otherwise, of a seasoning. Optional lines have none. */
  guarded: number;
  plain: number;
  seasoning: number;
  /** Salt, whose spoons are coarse: at the weight of a guarded ratio a quarter teaspoon would set the batch. Its limit still holds. */
  salt: number;
  /** Eggs in a ratio to flour, which holds four times as loosely as a liquid's: at the weight of a liquid one egg would set the batch. */
  egg: number;
  /** Weight of the batch's squared distance from the native size. */
  batch: number;
  /** Added where the batch is so far from the native size that it takes another time. */
  farBatch: number;
  /** Cost of a leftover, as a share of what was bought: if it keeps under a week, if it freezes. In the cupboard it costs nothing. */
  leftoverFresh: number;
  leftoverFrozen: number;
  /** Added to either where anything is left that keeps under two weeks: the last splash of a carton of stock is poured in. */
  packNotUsedUp: number;
  /** Cost of one level of awkwardness. */
  awkward: number;
  /** Weight of the squared distance of a range's width from the author's, and cost of one amount for a range. */
  width: number;
  narrowed: number;
  /** Cost of eggs in another size than the kitchen's usual one. */
  otherEgg: number;
  /** And of a size that is not on every shelf. */
  seldomEgg: number;
  /** Cost of packs in another size than the usual one of their container. */
  otherPack: number;
  /** Weight of the squared distance of the pan's base from the batch. */
  pan: number;
  /** Cost of one pan more or less than the author's two; of one pan twice as much, of four half. */
  otherPans: number;
  /** Limits of drift of the guarded ratios, as fractions. */
  limits: RatioLimits;
}

/** How far each guarded ratio may drift, as a fraction of the native ratio. */
export interface RatioLimits {
  leavening: number;
  salt: number;
  seasoning: number;
  gelling: number;
  /** Liquid, sugar and fat to flour, in a kitchen with a scale and without. */
  baking: number;
  bakingByVolume: number;
  /** The same of a line that is under a tenth of the flour. */
  bakingSmall: number;
  egg: number;
}

/** What counts where a site sets nothing. The package's README says of each that was tuned what the plain value chose wrongly. */
export const defaultWeights: Weights = {
  guarded: 3,
  plain: 1,
  seasoning: 0.3,
  salt: 1,
  egg: 2,
  batch: 0.2,
  farBatch: 0.005,
  leftoverFresh: 0.01,
  leftoverFrozen: 0.003,
  packNotUsedUp: 0.005,
  awkward: 0.001,
  width: 0.1,
  narrowed: 0.003,
  otherEgg: 0.01,
  seldomEgg: 0.03,
  otherPack: 0.0025,
  pan: 0.3,
  otherPans: 0.01,
  limits: {
    leavening: 0.1,
    salt: 0.1,
    seasoning: 0.1,
    gelling: 0.05,
    baking: 0.03,
    bakingByVolume: 0.06,
    bakingSmall: 0.1,
    egg: 0.12,
  },
};

/** A batch this far off bakes in another time. */
export const farBatch = 0.15;

/** Batch factors from the least to the most. */
export interface BatchSpan {
  least: number;
  most: number;
}

/** The batch may grow or shrink this far for the sake of whole packs. */
export const packSpan: BatchSpan = { least: 3 / 4, most: 4 / 3 };
/** And this far where nothing is used whole. */
export const measureSpan: BatchSpan = { least: 0.85, most: 1.15 };
/** An explicit anchor is the author's word, but a batch beyond half or twice the dish is another dish. */
export const anchorSpan: BatchSpan = { least: 1 / 2, most: 2 };

/** A choice may be this far from batch × native, as the logarithm of the ratio: beyond it no cook would call it the same dish. */
export const widestDrift = 0.35;
