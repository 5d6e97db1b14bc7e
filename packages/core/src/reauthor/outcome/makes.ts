import { Exact } from '../../exact.js';

/** Things of which a dish makes one, larger or smaller, and never a part. */
const whole =
  /\b(?:loaf|cake|pie|tart|pudding|traybake|bake|casserole|terrine|batch|flan|quiche|pizza|roulade|sponge|cheesecake|pavlova|trifle|meatloaf|galette|crumble|cobbler|frittata|focaccia|gratin)\b/i;
/** A number behind which a unit says that it is a size, not a count: `one 23 cm cake`, `a 9 × 13-inch bake`. */
const sized =
  /\d+(?:[.,]\d+)?(?=\s*(?:[×x]\s*\d|-?\s*(?:cm|mm|in|inch|inches|g|kg|ml|l|litre|lb|oz|cup|quart)\b|["″]))/gi;

/** Part of a serving or piece that nobody sees on a plate: 3.96 servings are about 4, and not 3. */
const atTheTable = '0.05';

/**
 * What a version makes: servings and pieces rounded down to a whole, but for a twentieth of one, with "about"; one loaf or cake stays one, a little larger or
 * smaller beyond 5 %.
 */
export function makesAt(makes: string | null, batch: Exact): string | null {
  if (makes === null || batch.equals(1)) return makes;
  const sizes = [...makes.matchAll(sized)].map(({ index }) => index);
  const counts = [...makes.matchAll(/\d+(?:\.\d+)?/g)].filter(
    ({ index }) => !sizes.some((size) => isPart(makes, size, index)),
  );
  const only = counts.length === 0 || counts.every(([number]) => number === '1');
  if (only && whole.test(makes)) return `${makes}${aLittle(batch)}`;
  if (counts.length === 0) return makes;
  let text = '';
  let at = 0;
  for (const { index, 0: number } of counts) {
    const scaled = Exact.max(new Exact(number).times(batch).plus(atTheTable).floor(), 1);
    text += makes.slice(at, index) + scaled.toString();
    at = index + number.length;
  }
  text += makes.slice(at);
  return withAbout(text);
}

/** The second side of `9 × 13-inch` belongs to the first. */
function isPart(makes: string, size: number, index: number): boolean {
  return index >= size && /^[\d.,\s×x]*$/i.test(makes.slice(size, index));
}

/** `about 4 servings`, `Serves about 4`. */
function withAbout(text: string): string {
  if (/\babout\b|\baround\b/i.test(text)) return text;
  const verb = /^\s*(?:serves|makes|feeds|yields)\s+/i.exec(text)?.[0] ?? '';
  return `${verb}about ${text.slice(verb.length)}`;
}

function aLittle(batch: Exact): string {
  if (batch.minus(1).abs().lessThanOrEqualTo('0.05')) return '';
  return batch.greaterThan(1) ? ', a little larger' : ', a little smaller';
}
