import { defaultWeights, type Weights } from '@retare/core';
import type { RuleName, Severity } from './schema/words.js';

/** A site's settings, `retare.yaml`: every one has a default. */
export interface Settings {
  /** Ids of the kitchens served, in the order of the chooser. */
  kitchens: readonly string[];
  /** Id of the kitchen that posts are written in unless they say otherwise. */
  kitchen: string;
  /** Ids of kitchens for which what conversion gives counts as an error. */
  mustHold: readonly string[];
  /** Severity by rule, where it is not the rule's own. */
  severity: Readonly<Partial<Record<RuleName, Severity>>>;
  /** How far an author's amount may be from a measurable one, as a fraction: 0.05 is 5 %. */
  tolerance: number;
  /** Weights and limits that versions are re-authored by, and held against. */
  reauthoring: Weights;
  /** The site's larder file, relative to its root; null if it has none. */
  larder: string | null;
  /** Globs of the posts, relative to the site's root. */
  posts: readonly string[];
}

/** The settings of an empty `retare.yaml`. */
export const defaultSettings: Settings = {
  kitchens: ['us', 'ca', 'uk', 'eu', 'au'],
  kitchen: 'us',
  mustHold: [],
  severity: {},
  tolerance: 0.05,
  reauthoring: defaultWeights,
  larder: null,
  posts: ['src/content/**/*.{md,mdx}'],
};
