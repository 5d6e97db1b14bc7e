import type { Stated } from '../../amount/stated.js';
import type { Choice, Demand, Offer } from '../search/demand.js';
import { widestDrift } from '../weights.js';
import type { OfferContext } from './offer-context.js';

/** The sizes that any batch could ask of a demand. */
export function reach({ quantity }: Demand, { batches }: OfferContext): { least: number; most: number } {
  const wide = Math.exp(widestDrift);
  return { least: (quantity * batches.least) / wide, most: quantity * batches.most * wide };
}

/** Sizes nearer than this are the same. */
const sameSize = 1 + 1e-9;

/** An offer in the making. */
export class OfferList {
  private readonly choices: Omit<Choice, 'index'>[] = [];
  private readonly states: (() => Stated)[] = [];

  add(demand: Demand, size: number, fixed: number, state: () => Stated): this {
    this.choices.push({ size, log: Math.log(size), grams: demand.base === 'g' ? size : 0, fixed });
    this.states.push(state);
    return this;
  }

  /** Whether a choice is near enough to a size, for the native batch unless another distance is named. */
  hasNear(size: number, within = widestDrift): boolean {
    const log = Math.log(size);
    return this.choices.some((choice) => Math.abs(choice.log - log) <= within);
  }

  /** Ascending; of choices of one size the cheapest, and of those the first tool. */
  offer(wholes: number[], stepGrams: number): Offer {
    const kept = this.isAscending() ? this.choices.map((_, at) => at) : this.inOrder();
    const choices = kept.flatMap((at, index) => {
      const choice = this.choices[at];
      return choice === undefined ? [] : [{ ...choice, index }];
    });
    return { choices, state: (index) => this.stateOf(kept[index]), wholes, stepGrams };
  }

  /** The marks of one tool come in order already. */
  private isAscending(): boolean {
    return this.choices.every(({ size }, at) => at === 0 || size > (this.choices[at - 1]?.size ?? 0) * sameSize);
  }

  private inOrder(): number[] {
    const size = (at: number): number => this.choices[at]?.size ?? 0;
    const fixed = (at: number): number => this.choices[at]?.fixed ?? 0;
    const kept: number[] = [];
    for (const at of this.choices.map((_, each) => each).sort((a, b) => size(a) - size(b) || a - b)) {
      const last = kept.at(-1);
      if (last === undefined || size(at) > size(last) * sameSize) kept.push(at);
      else if (fixed(at) < fixed(last)) kept[kept.length - 1] = at;
    }
    return kept;
  }

  private stateOf(at: number | undefined): Stated {
    const state = at === undefined ? undefined : this.states[at];
    if (state === undefined) throw new RangeError('There is no such choice.');
    return state();
  }
}
