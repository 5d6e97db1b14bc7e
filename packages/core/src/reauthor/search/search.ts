import type { Constraint } from '../ratio/constraint.js';
import { CoupledSearch } from './coupled-search.js';
import type { Choice, Demand } from './demand.js';
import { type Ranked, sameCost, Window } from './window.js';

/** The cheapest choice for every demand of a part, at one batch factor. */
export interface Found {
  /** Per demand, which of its choices. */
  choices: Choice[];
  cost: number;
}

/**
 * The cheapest choices of a part at one batch factor, by branch and bound: exact over all choices within the widest drift.
 *
 * It is searched within a small cost first and a larger one only where nothing was found: what costs less than a bound can only be
 * made of choices that cost less than it.
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
  const log = Math.log(batch);
  const windows = demands.map((demand) => new Window(demand, log));
  const least = windows.reduce((sum, window) => sum + window.least, 0);
  if (least >= most) return null;
  // Without limits the cheapest of each is the cheapest together.
  for (let room = constraints.length === 0 ? 1e-9 : Math.max(least, firstRoom); ; room *= 6) {
    const ranked = windows.map((window) => window.ranked(room));
    // Once every choice is in, only the sum is bounded.
    const isAll = windows.every(({ isWhole }) => isWhole);
    const bound = isAll ? most : Math.min(least + room, most);
    const search = isHopeless(ranked, constraints) ? null : new Search(ranked, constraints, bound);
    const found = search?.run() ?? null;
    if (search?.isTooLong === true) return searchCoupled(windows, constraints, most);
    if (found !== null || bound === most) return found;
  }
}

const firstRoom = 0.002;

/** The least that a part can cost at a batch factor, its limits left aside; infinite where a demand has no choice near it. */
export function leastCost(demands: readonly Demand[], batch: number): number {
  const log = Math.log(batch);
  let sum = 0;
  for (const demand of demands) sum += new Window(demand, log).least;
  return sum;
}

/** More than any choice within the widest drift costs. */
const everything = 1e6;

/** The same by a search that looks ahead, for what is coupled too tightly for the plain one. */
function searchCoupled(windows: readonly Window[], constraints: readonly Constraint[], most: number): Found | null {
  const ranked = windows.map((window) => window.ranked(everything));
  return new CoupledSearch(ranked, constraints, most).run();
}

/** Whether a limit is broken even by what suits it best of every demand. */
function isHopeless(ranked: readonly Ranked[][], constraints: readonly Constraint[]): boolean {
  return constraints.some(({ coefficients, bound }) => {
    let least = 0;
    for (let at = 0; at < ranked.length; at++) least += leastOf(ranked[at] ?? [], coefficients[at] ?? 0);
    return least > bound;
  });
}

function leastOf(ranked: readonly Ranked[], coefficient: number): number {
  if (coefficient === 0) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const { choice } of ranked) least = Math.min(least, coefficient * choice.grams);
  return least;
}

/** Choices that the plain search tries at most: nearly all real recipes need fewer. */
const patience = 10_000;

/** Depth first over the demands, those in the most limits first. */
class Search {
  private readonly order: number[];
  private readonly rest: number[];
  private readonly low: Float64Array[];
  private readonly sums: Float64Array[];
  private readonly current: Choice[];
  private best: Found | null = null;
  private bound: number;
  private steps = 0;
  private readonly ranked: readonly Ranked[][];
  private readonly constraints: readonly Constraint[];

  constructor(ranked: readonly Ranked[][], constraints: readonly Constraint[], most: number) {
    this.ranked = ranked;
    this.constraints = constraints;
    this.bound = most;
    const coupling = ranked.map((_, at) => this.coupling(at));
    this.order = ranked.map((_, at) => at).sort((a, b) => (coupling[b] ?? 0) - (coupling[a] ?? 0) || a - b);
    this.rest = this.cheapestRest();
    this.low = this.leastOfRest();
    this.sums = Array.from({ length: ranked.length + 1 }, () => new Float64Array(constraints.length));
    this.current = new Array(ranked.length);
  }

  run(): Found | null {
    this.visit(0, 0);
    return this.best;
  }

  /** In how many limits a demand is. */
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
        const row = low[depth];
        const least = leastOf(this.ranked[at] ?? [], coefficients[at] ?? 0);
        if (row !== undefined) row[index] = (low[depth + 1]?.[index] ?? 0) + least;
      });
    }
    return low;
  }

  /** Whether it was given up: what it found need not be the cheapest. */
  get isTooLong(): boolean {
    return this.steps > patience;
  }

  private visit(depth: number, cost: number): void {
    if (depth === this.order.length) {
      this.best = { choices: [...this.current], cost };
      this.bound = cost;
      return;
    }
    const at = this.order[depth] ?? 0;
    const rest = this.rest[depth + 1] ?? 0;
    for (const { choice, cost: own } of this.ranked[at] ?? []) {
      // Choices come by cost: what follows is dearer still.
      if (cost + own + rest >= this.bound - sameCost || ++this.steps > patience) return;
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
