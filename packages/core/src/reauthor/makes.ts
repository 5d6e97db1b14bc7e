import { Exact } from '../exact.js';

/** Things of which a dish makes one, larger or smaller, and never a part. */
const whole = /\b(?:loaf|cake|pie|tart|pudding|traybake|bake|casserole|terrine|batch)\b/i;

/**
 * What a version makes: servings and pieces rounded down to a whole, with "about"; one loaf or cake stays one, a little larger or
 * smaller beyond 5 %.
 */
export function makesAt(makes: string | null, batch: Exact): string | null {
  if (makes === null || batch.equals(1)) return makes;
  const number = /\d+/.exec(makes);
  if (number === null) return makes;
  const count = new Exact(number[0]);
  if (count.equals(1) && whole.test(makes)) return `${makes}${aLittle(batch)}`;
  const scaled = count.times(batch).floor();
  if (scaled.isZero()) return makes;
  const text = makes.slice(0, number.index) + scaled.toString() + makes.slice(number.index + number[0].length);
  return /^\s*(?:about|around)\b/i.test(text) ? text : `about ${text}`;
}

function aLittle(batch: Exact): string {
  if (batch.minus(1).abs().lessThanOrEqualTo('0.05')) return '';
  return batch.greaterThan(1) ? ', a little larger' : ', a little smaller';
}
