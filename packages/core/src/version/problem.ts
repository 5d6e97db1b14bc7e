import type { Stated, Term } from '../amount/stated.js';
import type { Exact } from '../exact.js';
import type { Food, Pack } from '../food/food.js';
import type { BeyondDial } from '../kitchen/heat/oven.js';
import type { SafeTemperature } from '../kitchen/kitchen.js';

/**
 * What stands in the way of cooking a line in a kitchen, as data: the words are made where it is reported. `text` is what is read
 * there, as written.
 */
export type Problem =
  | {
      rule: 'unmeasurable';
      reason: 'no-tool' | 'between-measures' | 'below-smallest' | 'no-unit';
      text: string;
      term: Term;
      food: Food | null;
      nearest: Stated[];
    }
  | { rule: 'unbuyable'; reason: 'not-sold'; text: string; food: Food; standIns: { food: string; share: Exact }[][] }
  | { rule: 'unbuyable'; reason: 'pack-size'; text: string; food: Food; packs: Pack[]; nearest: Stated[] }
  | { rule: 'unbuyable'; reason: 'part-of-pack'; text: string; food: Food; packs: Pack[]; nearest: Stated[] }
  | { rule: 'unbuyable'; reason: 'counter-step'; text: string; food: Food; nearest: Stated[] }
  | { rule: 'unbuyable'; reason: 'part-of-piece'; text: string; food: Food; nearest: Stated[] }
  /** Size classes of eggs that are sold there, as its data spells them. */
  | { rule: 'unbuyable'; reason: 'egg-size'; text: string; food: Food; sizes: string[] }
  | {
      rule: 'awkward-leftover';
      text: string;
      food: Food;
      grams: Exact;
      spoils: boolean;
      days: number | null;
      packs: { count: number; pack: Pack }[];
    }
  | { rule: 'curing-salt'; text: string; food: Food }
  | { rule: 'which-salt'; text: string; food: Food; grams: [Exact, Exact] }
  | { rule: 'unknown-food'; text: string }
  | { rule: 'unreadable-amount'; text: string; because: string; instead: string }
  | { rule: 'underdone'; text: string; unit: 'C' | 'F'; minimum: SafeTemperature; write: string }
  | { rule: 'oven-disagrees'; text: string; first: string; second: string }
  | { rule: 'oven-beyond-dial'; text: string; beyond: BeyondDial };

/** Name of a rule that a version itself can break. */
export type ProblemRule = Problem['rule'];
