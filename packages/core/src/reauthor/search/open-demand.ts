import type { Ranked } from './window.js';

/** One choice of a demand, and what it costs with a price on what it does to each limit. */
export interface Option {
  ranked: Ranked;
  grams: number;
  cost: number;
  priced: number;
}

/** A demand that is still open, with what of it can still be. */
export interface Open {
  /** Its place among the demands. */
  at: number;
  options: Option[];
}

/** A limit that a demand is in, by its place among the limits. */
export interface Share {
  limit: number;
  coefficient: number;
}
