import { firstFrom } from '../first-from.js';
import type { Choice, Demand } from './demand.js';

/** A choice with what it costs at a batch factor. */
export interface Ranked {
  choice: Choice;
  cost: number;
}

/** Costs nearer than this are the same: sums of floats differ in their last digits by the order of the lines. */
export const sameCost = 1e-12;

/** The choices of a demand around what a batch asks of it. */
export class Window {
  /** What the cheapest costs. */
  readonly least: number;
  /** Every choice within the widest drift has been handed out. */
  isWhole = false;
  private readonly demand: Demand;
  private readonly wanted: number;
  /** Index of the first choice that is not below what is wanted. */
  private readonly middle: number;

  constructor(demand: Demand, logBatch: number) {
    this.demand = demand;
    this.wanted = Math.log(demand.quantity) + logBatch;
    this.middle = firstFrom(demand.choices, this.wanted, logOf);
    this.least = this.cheapest();
  }

  /**
   * Choices that cost at most this much more than the cheapest: by cost, then by nearness, then the smaller. What weighs nothing costs
   * nothing and goes by nearness and awkwardness, as a line does that is converted by itself.
   */
  ranked(more: number): Ranked[] {
    const { choices, weight, widest } = this.demand;
    const bound = this.least + more + sameCost;
    const drift = weight === 0 ? widest : Math.min(widest, Math.sqrt(bound / weight));
    const ranked: Ranked[] = [];
    for (let at = firstFrom(choices, this.wanted - drift, logOf); at < choices.length; at++) {
      const choice = choices[at];
      if (choice === undefined || choice.log > this.wanted + drift) break;
      const cost = this.costOf(choice);
      if (cost <= bound) ranked.push({ choice, cost });
    }
    // The dearest that there is: nothing lies beyond.
    this.isWhole = weight === 0 || bound >= weight * widest * widest + dearest(choices);
    const own = weight === 0 ? fixedAsDrift : 0;
    const far = ({ choice }: Ranked): number => Math.abs(choice.log - this.wanted) + own * choice.fixed;
    return ranked.sort((a, b) => a.cost - b.cost || far(a) - far(b) || a.choice.index - b.choice.index);
  }

  private costOf({ log, fixed }: Choice): number {
    const { weight, widest } = this.demand;
    const drift = log - this.wanted;
    if (Math.abs(drift) > widest) return Number.POSITIVE_INFINITY;
    return weight === 0 ? 0 : weight * drift * drift + fixed;
  }

  private cheapest(): number {
    const { choices, weight, widest } = this.demand;
    let least = Number.POSITIVE_INFINITY;
    for (const step of [-1, 1]) {
      for (let at = step < 0 ? this.middle - 1 : this.middle; at >= 0 && at < choices.length; at += step) {
        const choice = choices[at];
        if (choice === undefined) break;
        const drift = choice.log - this.wanted;
        if (Math.abs(drift) > widest || weight * drift * drift >= least) break;
        least = Math.min(least, this.costOf(choice));
      }
    }
    return least;
  }
}

/** Drift that is worth a unit of fixed cost where nothing weighs: a level of awkwardness is a hundredth, as in converting. */
const fixedAsDrift = 20;

const fixedMost = new WeakMap<readonly Choice[], number>();

function dearest(choices: readonly Choice[]): number {
  let most = fixedMost.get(choices);
  if (most === undefined) {
    most = choices.reduce((sum, { fixed }) => Math.max(sum, fixed), 0);
    fixedMost.set(choices, most);
  }
  return most;
}

const logOf = ({ log }: Choice): number => log;
