import type { Constraint } from '../ratio/constraint.js';
import type { Choice } from './demand.js';
import { hubsOf } from './hubs-of.js';
import { movePrices, scaleOf } from './limit-prices.js';
import type { Open, Option, Share } from './open-demand.js';
import type { Found } from './search.js';
import { type Ranked, sameCost } from './window.js';

/** How often prices are moved at a step, and at the first. */
const moves = 12;
const firstMoves = 80;
/** Grams: sums of the same amounts in another order. */
const sameRoom = 1e-8;

/** Time has to end: the steps that no recipe of a real kitchen was seen to need. */
const mostSteps = 20_000;

/**
 * The cheapest choices of a part whose limits couple many demands at once, by branch and bound: every step leaves out what no limit can
 * bear any more, and follows nothing that must cost more than the best, by prices on the limits (Lagrange multipliers).
 */
export class CoupledSearch {
  private readonly limits: readonly Constraint[];
  private readonly shares: Share[][];
  private readonly hubs: ReadonlySet<number>;
  private readonly scale: number[];
  private readonly chosen: Choice[];
  private readonly all: Open[];
  /** What all costs at most: where prices ask for more, nothing keeps the limits. */
  private readonly dearest: number;
  /** What was left to do, and what at least that costs; infinite where nothing keeps the limits. */
  private readonly known = new Map<string, number>();
  private best: Found | null = null;
  private bound: number;
  /** How many were taken. */
  steps = 0;

  /**
   * @param ranked Every choice of each demand.
   * @param most Give up on anything that costs as much.
   */
  constructor(ranked: readonly Ranked[][], limits: readonly Constraint[], most: number) {
    this.limits = limits;
    this.dearest = ranked.reduce((sum, each) => sum + Math.max(...each.map(({ cost }) => cost)), 1e-6);
    this.bound = Math.min(most, this.dearest);
    this.shares = ranked.map((_, at) =>
      limits.flatMap(({ coefficients }, limit) => {
        const coefficient = coefficients[at] ?? 0;
        return coefficient === 0 ? [] : [{ limit, coefficient }];
      }),
    );
    this.hubs = hubsOf(this.shares, limits);
    this.all = ranked.map((each, at) => ({
      at,
      options: each.map((one) => ({ ranked: one, grams: one.choice.grams, cost: one.cost, priced: one.cost })),
    }));
    const ranges = this.all.map(({ options }) => {
      const [least, most] = reachOf(options);
      return most - least;
    });
    this.scale = limits.map((limit) => scaleOf(limit, ranges));
    this.chosen = new Array(ranked.length);
  }

  run(): Found | null {
    const room = this.limits.map(({ bound }) => bound);
    this.visit({ before: this.all, spent: 0, room, prices: new Float64Array(room.length), moves: firstMoves });
    return this.best;
  }

  /** @returns Whether nothing keeps the limits, whatever it costs. */
  private visit({ before, spent, room: left, ...rest }: Step): boolean {
    if (++this.steps > mostSteps) return false;
    const consistent = this.consistent(before, left);
    if (consistent === null) return true;
    const open = consistent.filter(({ options }) => options.length > 1);
    const room = [...left];
    let cost = spent;
    // What has one option left is chosen.
    for (const { at, options } of consistent) {
      const [only] = options;
      if (only === undefined || options.length > 1) continue;
      cost += only.cost;
      this.choose(at, only, room);
    }
    if (cost + leastOf(open) >= this.bound - sameCost) return false;
    if (open.length === 0) {
      this.best = { choices: [...this.chosen], cost };
      this.bound = cost;
      return false;
    }
    if (this.isTorn(open, room)) return true;
    const key = this.keyOf(open, room);
    const known = this.known.get(key) ?? Number.NEGATIVE_INFINITY;
    if (known >= this.bound - cost) return known === Number.POSITIVE_INFINITY;
    const isImpossible = this.follow({ ...rest, before: open, spent: cost, room });
    if (this.steps <= mostSteps) this.known.set(key, isImpossible ? Number.POSITIVE_INFINITY : this.bound - cost);
    return isImpossible;
  }

  /** Tries every option of one demand, the cheapest by the prices first. */
  private follow({ before: open, spent, room, prices: from, moves: times }: Step): boolean {
    const priceable = { open, room, shares: this.shares, scale: this.scale };
    const aim = { most: this.bound - spent, isSure: this.best !== null, moves: times };
    const { prices, least } = movePrices(priceable, from, aim);
    if (spent + least >= this.bound) return spent + least > this.dearest;
    const next = this.nextOf(open);
    const before = open.filter((each) => each !== next);
    const options = [...next.options].sort((a, b) => a.priced - b.priced || a.cost - b.cost);
    const cheapest = options[0]?.priced ?? 0;
    let isImpossible = true;
    for (const option of options) {
      if (spent + least + option.priced - cheapest >= this.bound) return false;
      const own = [...room];
      this.choose(next.at, option, own);
      const step = { before, spent: spent + option.cost, room: own, prices, moves };
      isImpossible = this.visit(step) && isImpossible;
    }
    return isImpossible;
  }

  /** @param room What is left of each limit, less what it takes. */
  private choose(at: number, { ranked, grams }: Option, room: number[]): void {
    this.chosen[at] = ranked.choice;
    for (const { limit, coefficient } of this.shares[at] ?? []) room[limit] = (room[limit] ?? 0) - coefficient * grams;
  }

  /** Leaves out whatever breaks a limit beside anything of the others, until nothing more is; null where a demand has nothing left. */
  private consistent(before: readonly Open[], room: readonly number[]): Open[] | null {
    let open = before.map(({ at, options }) => ({ at, options }));
    for (let changed = true; changed; ) {
      changed = false;
      const low = new Float64Array(this.limits.length);
      const own = open.map(({ at, options }) => {
        const [least, most] = reachOf(options);
        return (this.shares[at] ?? []).map(({ limit, coefficient }) => {
          const lowest = coefficient > 0 ? coefficient * least : coefficient * most;
          low[limit] = (low[limit] ?? 0) + lowest;
          return lowest;
        });
      });
      if (low.some((each, limit) => each > (room[limit] ?? 0))) return null;
      open = open.map(({ at, options }, index) => {
        const shares = this.shares[at] ?? [];
        const kept = options.filter(({ grams }) =>
          shares.every(
            ({ limit, coefficient }, each) =>
              (low[limit] ?? 0) - (own[index]?.[each] ?? 0) + coefficient * grams <= (room[limit] ?? 0),
          ),
        );
        changed ||= kept.length < options.length;
        return { at, options: kept };
      });
      if (open.some(({ options }) => options.length === 0)) return null;
    }
    return open;
  }

  /** Hubs come first, and of the others what has the fewest options. */
  private nextOf(open: readonly Open[]): Open {
    const key = ({ at, options }: Open): number => options.length - (this.hubs.has(at) ? 1e6 : 0);
    return open.reduce((next, each) => (key(each) < key(next) ? each : next));
  }

  /** Whether two limits ask more and less of all together than each other. */
  private isTorn(open: readonly Open[], room: readonly number[]): boolean {
    let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const [limit, { coefficients }] of this.limits.entries()) {
      const each = coefficients[open[0]?.at ?? 0] ?? 0;
      if (each === 0 || open.some(({ at }) => coefficients[at] !== each)) continue;
      if (each > 0) most = Math.min(most, (room[limit] ?? 0) / each);
      else least = Math.max(least, (room[limit] ?? 0) / each);
    }
    return least > most + sameRoom;
  }

  /** What is left to do: the same in another order of what was chosen. */
  private keyOf(open: readonly Open[], room: readonly number[]): string {
    const limits = new Set(open.flatMap(({ at }) => this.shares[at]?.map(({ limit }) => limit) ?? []));
    const left = [...limits].map((limit) => Math.round((room[limit] ?? 0) / sameRoom));
    return `${open.map(({ at }) => at).join(' ')} ${left.join(' ')}`;
  }
}

/** A step of the search. */
interface Step {
  /** What is still open. */
  before: readonly Open[];
  /** What is chosen costs so much. */
  spent: number;
  /** What is left of each limit. */
  room: readonly number[];
  /** Those of the step before. */
  prices: Float64Array;
  moves: number;
}

function reachOf(options: readonly Option[]): [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { grams } of options) {
    least = Math.min(least, grams);
    most = Math.max(most, grams);
  }
  return [least, most];
}

function leastOf(open: readonly Open[]): number {
  let sum = 0;
  for (const { options } of open) {
    let least = Number.POSITIVE_INFINITY;
    for (const { cost } of options) least = Math.min(least, cost);
    sum += least;
  }
  return sum;
}
