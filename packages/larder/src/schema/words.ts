import type { CountUnit, Keeping, KitchenVolumeUnit, MassUnit, Role, UseWhole, VolumeUnit, Way } from '@retare/core';

/** What a food may do in a dish. */
export const roles = [
  'flour',
  'liquid',
  'fat',
  'sugar',
  'egg',
  'leavening',
  'salt',
  'gelling',
  'cure',
  'acid',
  'bulk',
  'seasoning',
] as const satisfies readonly Role[];

/** Volume units whose size is a kitchen's own. */
export const kitchenVolumeUnits = [
  'tsp',
  'tbsp',
  'cup',
  'floz',
  'pint',
  'quart',
  'gallon',
] as const satisfies readonly KitchenVolumeUnit[];

/** Volume units of labels, tools and densities. */
export const volumeUnits = ['ml', 'cl', 'dl', 'l', ...kitchenVolumeUnits] as const satisfies readonly VolumeUnit[];

/** Mass units of labels, tools and counters. */
export const massUnits = ['g', 'kg', 'mg', 'oz', 'lb'] as const satisfies readonly MassUnit[];

/** Units in which one piece of a food is counted. */
export const pieceUnits = [
  'count',
  'clove',
  'slice',
  'stick',
  'head',
  'bunch',
  'sprig',
  'piece',
  'handful',
  'packet',
  'can',
  'tin',
  'pinch',
  'dash',
] as const satisfies readonly CountUnit[];

/** Words for the size of a counted food, as an ingredient line has them. */
export const pieceSizes = ['small', 'medium', 'large', 'extra large', 'jumbo'] as const;

/** Where an opened pack is kept. */
export const keepingPlaces = ['cupboard', 'fridge', 'freezer'] as const satisfies readonly Keeping['where'][];

/** Whether a cook uses a pack up. */
export const useWhole = ['yes', 'half', 'no'] as const satisfies readonly UseWhole[];

/** Ways of measuring. */
export const ways = ['spoon', 'cup', 'jug', 'scale'] as const satisfies readonly Way[];

/** Classes of food for which authorities publish a core temperature. */
export const safeClasses = [
  'poultry',
  'poultry-pieces',
  'ground-poultry',
  'ground-meat',
  'whole-meat',
  'game',
  'pork',
  'ham',
  'sausage',
  'fish',
  'shellfish',
  'egg-dish',
  'casserole',
  'leftovers',
  'stuffing',
  'offal',
] as const;

/** Allergens that a label must name: Regulation (EU) No 1169/2011, annex II, one word each. */
export const allergens = [
  'gluten',
  'crustaceans',
  'egg',
  'fish',
  'peanut',
  'soya',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphite',
  'lupin',
  'molluscs',
] as const;

/** Rules of the checker whose severity a site may set. */
export const ruleNames = [
  'unbuyable',
  'unmeasurable',
  'underdone',
  'curing-salt',
  'which-salt',
  'unreadable-amount',
  'unknown-food',
  'awkward-leftover',
  'annotation',
  'oven-disagrees',
  'oven-beyond-dial',
  'missing-from',
  'ask-preserve',
  'stale-version',
  'ratio-drift',
] as const;

/** A rule whose severity a site may set. */
export type RuleName = (typeof ruleNames)[number];

/** How a finding of a rule counts. */
export const severities = ['error', 'warning', 'off'] as const;

/** How a finding of a rule counts. */
export type Severity = (typeof severities)[number];
