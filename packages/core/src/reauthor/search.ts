import type { Constraint } from './constraint.js';
import type { Choice, Demand } from './demand.js';

/** The cheapest choice for every demand of a part, at one batch factor. */
export interface Found {
  /** Per demand, which of its choices. */
  choices: Choice[];
  cost: number;
}

interface Ranked {
  choice: Choice;
  cost: number;
}

/** How far a choice may be from batch × native: beyond it no cook would call it the same dish. */
export const widestDrift = 0.35;

/**
 * The cheapest choices of a part at one batch factor, by branch and bound: exact over all choices within the widest drift.
 *
 * @param constraints Linear limits on grams.
 * @param most Give up on anything that costs as much.
 * @returns Null where no choice satisfies the limits for less than `most`.
 */
export function cheapest(
  demands: readonly Demand[],
  constraints: readonly Constraint[],
  batch: number,
  most: number,
): Found | null {
  const ranked = demands.map((demand) => rank(demand, batch));
  if (ranked.some((choices) => choices.length === 0)) return null;
  return new Search(demands, ranked, constraints, most).run();
}

/** The least that a part can cost at a batch factor, its limits left aside; infinite where a demand has no choice near it. */
export function leastCost(demands: readonly Demand[], batch: number): number {
  return demands.reduce((sum, demand) => {
    let least = Number.POSITIVE_INFINITY;
    for (const choice of demand.choices) least = Math.min(least, costOf(choice, demand, batch));
    return sum + least;
  }, 0);
}

function costOf(choice: Choice, { quantity, weight }: Demand, batch: number): number {
  const drift = Math.log(choice.size / (quantity * batch));
  return Math.abs(drift) > widestDrift ? Number.POSITIVE_INFINITY : weight * drift * drift + choice.fixed;
}

/** Choices by cost, ties by size and then in the order of the tools, so that the same is chosen every time. */
function rank(demand: Demand, batch: number): Ranked[] {
  return demand.choices
    .map((choice) => ({ choice, cost: costOf(choice, demand, batch) }))
    .filter(({ cost }) => cost < Number.POSITIVE_INFINITY)
    .sort((a, b) => a.cost - b.cost || a.choice.size - b.choice.size || a.choice.index - b.choice.index);
}

/** Depth first over the demands, those with the tightest limits first. */
class Search {
  private readonly order: number[];
  private readonly rest: number[];
  private readonly low: Float64Array[];
  private readonly sums: Float64Array[];
  private readonly current: Choice[];
  private best: Found | null = null;
  private bound: number;
  private readonly ranked: Ranked[][];
  private readonly constraints: readonly Constraint[];

  constructor(demands: readonly Demand[], ranked: Ranked[][], constraints: readonly Constraint[], most: number) {
    this.ranked = ranked;
    this.constraints = constraints;
    this.bound = most;
    this.order = demands.map((_, at) => at).sort((a, b) => this.coupling(b) - this.coupling(a) || a - b);
    this.rest = this.cheapestRest();
    this.low = this.leastOfRest();
    this.sums = Array.from({ length: demands.length + 1 }, () => new Float64Array(constraints.length));
    this.current = new Array(demands.length);
  }

  run(): Found | null {
    this.visit(0, 0);
    return this.best;
  }

  /** A demand in many limits, and with large coefficients, is settled early. */
  private coupling(at: number): number {
    return this.constraints.reduce((sum, { coefficients }) => sum + ((coefficients[at] ?? 0) === 0 ? 0 : 1), 0);
  }

  /** From each depth on, the least that the demands left can cost. */
  private cheapestRest(): number[] {
    const rest = new Array<number>(this.order.length + 1).fill(0);
    for (let depth = this.order.length - 1; depth >= 0; depth--) {
      rest[depth] = (rest[depth + 1] ?? 0) + (this.ranked[this.order[depth] ?? 0]?.[0]?.cost ?? 0);
    }
    return rest;
  }

  /** From each depth on, the least that the demands left can add to each limit. */
  private leastOfRest(): Float64Array[] {
    const low = Array.from({ length: this.order.length + 1 }, () => new Float64Array(this.constraints.length));
    for (let depth = this.order.length - 1; depth >= 0; depth--) {
      const at = this.order[depth] ?? 0;
      this.constraints.forEach(({ coefficients }, index) => {
        const coefficient = coefficients[at] ?? 0;
        let least = Number.POSITIVE_INFINITY;
        for (const { choice } of this.ranked[at] ?? []) least = Math.min(least, coefficient * choice.grams);
        const row = low[depth];
        if (row !== undefined) row[index] = (low[depth + 1]?.[index] ?? 0) + least;
      });
    }
    return low;
  }

  private visit(depth: number, cost: number): void {
    if (depth === this.order.length) {
      this.best = { choices: [...this.current], cost };
      this.bound = cost;
      return;
    }
    const at = this.order[depth] ?? 0;
    for (const { choice, cost: own } of this.ranked[at] ?? []) {
      // Choices come by cost: what follows is dearer still.
      if (cost + own + (this.rest[depth + 1] ?? 0) >= this.bound) return;
      if (this.add(at, choice.grams, depth)) {
        this.current[at] = choice;
        this.visit(depth + 1, cost + own);
      }
    }
  }

  /** Adds to every limit; false where one can no longer be kept. */
  private add(at: number, grams: number, depth: number): boolean {
    const before = this.sums[depth];
    const after = this.sums[depth + 1];
    const low = this.low[depth + 1];
    if (before === undefined || after === undefined || low === undefined) return false;
    for (let index = 0; index < this.constraints.length; index++) {
      const constraint = this.constraints[index];
      if (constraint === undefined) continue;
      const sum = (before[index] ?? 0) + (constraint.coefficients[at] ?? 0) * grams;
      after[index] = sum;
      if (sum + (low[index] ?? 0) > constraint.bound) return false;
    }
    return true;
  }
}
