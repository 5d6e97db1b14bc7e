import { type Food, type Kitchen, type MeasureSet, type Pack, type Sold, soldFor } from './optimum-kinds.ts';
import type { Wanted } from './optimum-recipes.ts';

/** One amount that a cook could write down: grams, and what it costs whatever the batch. */
export interface Candidate {
  grams: number;
  fixed: number;
  pinch?: true;
}

/** All candidates of a food in a kitchen, from its tools and shops. */
export interface Candidates {
  list: Candidate[];
  /** It comes in packs or pieces that set the batch. */
  setsBatch: boolean;
  /** Smallest step of what measures it, grams. */
  step: number;
}

const awkwardness = 0.001;
export const otherEgg = 0.01;
export const seldomEgg = 0.03;
const otherPack = 0.0025;
/** What any batch could ask for, by factors of the native need. */
export interface Reach {
  least: number;
  most: number;
}

/** Three quarters to four thirds, and then 35 % (as a logarithm) off. */
export const ownReach: Reach = { least: 0.75 / Math.exp(0.36), most: (4 / 3) * Math.exp(0.36) };
/** An anchor may ask for half to twice the dish. */
export const anchorReach: Reach = { least: 0.5 / Math.exp(0.36), most: 2 * Math.exp(0.36) };
let [least, most] = [ownReach.least, ownReach.most];

/** Own list of what may be written for a need; nothing of the searched code is used. */
export function candidatesFor(food: Food, kitchen: Kitchen, wanted: Wanted, reach: Reach): Candidates {
  ({ least, most } = reach);
  const sold = soldFor(food, kitchen.id);
  const part = ofAnEgg[food.id];
  if (part !== undefined && wanted.unit === 'count')
    return Number.isInteger(wanted.count)
      ? eggs(kitchen, wanted.grams, part)
      : partOfAnEgg(food, kitchen, wanted, part);
  if (sold !== null && sold.packs.length > 0 && !sold.loose && sold.packs.every(({ whole }) => whole !== 'no')) {
    return wholePacks(food, sold, wanted);
  }
  if (wanted.unit === 'count') return pieces(food, sold, wanted);
  const counter = counterGrams(kitchen);
  // A little less than the counter weighs off is its first step, where there is no scale for less.
  const byWeight = wanted.unit === 'g' || (wanted.unit === 'ml' && kitchen.scale !== null && !food.pours);
  const isWeighedOff =
    byWeight && Math.log(counter / wanted.grams) <= (kitchen.scale === null ? 0.35 : -Math.log(0.97));
  // What is sold singly too is weighed off only where there is no scale, and from a pound or so.
  const isHeavy = !sold?.singly || (kitchen.scale === null && !food.pours && wanted.grams >= 0.97 * 4 * counter);
  if (sold?.loose && sold.packs.length === 0 && isWeighedOff && isHeavy)
    return { list: offCounter(wanted.grams, kitchen), setsBatch: false, step: 0 };
  return measured(food, kitchen, sold, wanted);
}

/** Of the 50 g of a large egg 33 are white and 17 yolk (USDA SR26 01123 to 01125). */
export const ofAnEgg: Readonly<Record<string, number>> = { egg: 1, 'egg-white': 0.66, 'egg-yolk': 0.34 };

function eggs({ eggs: { sizes, usual } }: Kitchen, grams: number, part: number): Candidates {
  const list = sizes.flatMap((size) =>
    upTo(grams, Number(size.edibleGrams) * part, 1).map((each) => ({
      grams: each,
      fixed: size.name === usual ? 0 : size.seldom ? seldomEgg : otherEgg,
    })),
  );
  return { list, setsBatch: true, step: 0 };
}

/** Of what takes a part of one, beaten and measured, with what is left of the last one; or whole ones. They set no batch. */
function partOfAnEgg(food: Food, kitchen: Kitchen, wanted: Wanted, part: number): Candidates {
  const { sizes, usual } = kitchen.eggs;
  const each = Number(sizes.find(({ name }) => name === usual)?.edibleGrams) * part;
  const poured = measured(food, kitchen, soldFor(food, kitchen.id), { ...wanted, unit: 'g' }).list.map((candidate) => {
    const count = candidate.grams / each;
    const left = Math.max(Math.ceil(count - 1e-9) - count, 0) / Math.ceil(count - 1e-9);
    return { ...candidate, fixed: candidate.fixed + 0.01 * left + (left > 0.01 ? 0.005 : 0) };
  });
  return { list: cheapestOfEach([...eggs(kitchen, wanted.grams, part).list, ...poured]), setsBatch: false, step: 0 };
}

/** One step of what the shop weighs off, grams. */
function counterGrams({ counter }: Kitchen): number {
  return Number(counter.step) * (counter.unit === 'lb' ? 453.59237 : 1);
}

/** Whole steps of the counter, and where it weighs pounds thirds of them, up to 2⅔. */
function offCounter(grams: number, kitchen: Kitchen): Candidate[] {
  const third = 453.59237 / 3;
  const thirds = kitchen.counter.unit === 'lb' ? upTo(grams, third, 1).filter((size) => size < 8.5 * third) : [];
  return [...upTo(grams, counterGrams(kitchen), 1), ...thirds].map((size) => ({ grams: size, fixed: 0 }));
}

/** Whole packs, and halves of which the rest is kept. */
export function wholePacks(food: Food, { packs }: Sold, { grams, unit }: Pick<Wanted, 'grams' | 'unit'>): Candidates {
  const list = packs.flatMap((pack) => {
    // A cup of chickpeas is drained already; a tin against a tin is net against net.
    const each = unit !== 'pack' && pack.drainedGrams !== null ? Number(pack.drainedGrams) : Number(pack.grams);
    const few = pack === packs.at(-1) ? Number.POSITIVE_INFINITY : 3;
    const sizes = upTo(grams, each, pack.whole === 'half' && halfIsKept(food, pack) ? 0.5 : 1);
    return sizes.flatMap((size) => {
      if (size / each > few + 1e-9) return [];
      const count = size / each;
      const half = count % 1 === 0 ? 0 : remainderCost(food, Math.ceil(count), 0.5);
      return { grams: size, fixed: (isUsual(pack, count, packs) ? 0 : otherPack) + half };
    });
  });
  return { list: cheapestOfEach(list), setsBatch: true, step: 0 };
}

/** Kept over the week or frozen, and enough of it. */
function halfIsKept({ keeps }: Food, pack: Pack): boolean {
  const isLittle = keeps.where !== 'cupboard' && Number(pack.grams) / 2 < Number(keeps.leastGrams);
  return !isLittle && (keeps.days === null || keeps.days > 6 || keeps.freezes);
}

/** Of a size that is usual, or the only one known, or as much as several usual packs in fewer. */
function isUsual(pack: Pack, count: number, packs: readonly Pack[]): boolean {
  const usual = packs.find((each) => each.usual && each.word === pack.word);
  if (usual === undefined || pack.usual) return true;
  const contents = count * Number(pack.grams);
  return [...Array(40).keys()].some((n) => n >= count && Math.abs((n * Number(usual.grams)) / contents - 1) <= 0.03);
}

function pieces(food: Food, sold: Sold | null, { grams, count }: Wanted): Candidates {
  const each = grams / count;
  const bags = sold?.packs.filter(({ unit }) => unit === 'count').map(({ size }) => Number(size)) ?? [];
  // What comes several in a bag is halved only where the author halves it.
  const isBagged = bags.some((size) => size > 1);
  const step = !Number.isInteger(count) || (count <= 2 && !isBagged && each >= 5) ? 0.5 : 1;
  const list = [grams, ...upTo(grams, each, step)].map((size) => {
    if (bags.length === 0) return { grams: size, fixed: 0 };
    const { bought, left } = leastLeft(size / each, bags);
    return { grams: size, fixed: remainderCost(food, bought, left) };
  });
  return { list: cheapestOfEach(list), setsBatch: false, step: step * each };
}

/** Multiples of a pack or piece that any batch could ask for. */
function upTo(grams: number, each: number, step: number): number[] {
  const sizes: number[] = [];
  for (let count = step; count * each <= grams * most; count += step)
    if (count * each >= grams * least) sizes.push(count * each);
  return sizes;
}

function measured(food: Food, kitchen: Kitchen, sold: Sold | null, wanted: Wanted): Candidates {
  const density = Number(
    (food.densities.find(({ form }) => form === null) ?? food.densities[0])?.gramsPerMl ?? Number.NaN,
  );
  const found: Candidate[] = [];
  const packs = countedPacks(food, sold, wanted);
  const notInPacks = packs.some(({ grams }) => Math.abs(Math.log(grams / wanted.grams)) <= 0.35) ? 10 : 0;
  const inParts: Candidate[] = [];
  let step = Number.POSITIVE_INFINITY;
  const isMarked = kitchen.scale === null && (sold?.packs.some(({ marks: on }) => on !== null) ?? false);
  let evenShort = false;
  const add = (way: string, level: number): void => {
    // What the author spooned is spooned, and least of all weighed.
    const least = wanted.spooned && way !== 'spoon' ? Math.max(level, way === 'scale' ? 4 : 1) : level;
    // Where a wrapper says what a tablespoon is, no tablespoon says otherwise.
    if (isMarked && way === 'cup') return;
    const sizes = isMarked && way === 'spoon' ? teaspoons(kitchen) : sizesOf(way, kitchen, sold);
    const each = way === 'scale' || way === 'wrapper' ? 1 : density;
    if (sizes.length === 0 || Number.isNaN(each)) return;
    const at = wanted.grams / each;
    const holds = sizes.map(({ size }) => size);
    const own = way === 'spoon' ? Math.min(...holds) : gapIn(sizes, at);
    // What no spoon holds is not measured by the smallest of them.
    if (way !== 'spoon' || at <= Math.max(...holds)) step = Math.min(step, own * each);
    const byLabel = !evenShort && labelsAreIn(way === 'scale' || way === 'wrapper' ? 'mass' : 'volume', sold);
    for (const { size, awkward } of sizes) {
      const grams = size * each;
      if (!byLabel || !isMoreThanBought(grams, sold))
        found.push({ grams, fixed: (notInPacks + Math.max(least, awkward)) * awkwardness });
    }
  };
  const usual = (as: Wanted, least: number): void => {
    // Nobody fills a cup with what is divided by eye, but where the author does, and under three quarters of the least part.
    const leastPart = Math.min(...(sold?.packs ?? []).map((pack) => Number(pack.grams))) / 4;
    const noCup = food.byEye === 'only' && kitchen.scale === null && as.unit === 'g' && as.grams >= 0.75 * leastPart;
    for (const way of waysFor(food, kitchen, as, density)) if (!noCup || way === 'spoon') add(way, least);
    if (kitchen.scale === null) add('wrapper', least);
    // Under a pound of what is sold singly too the counter is one more tool.
    if (kitchen.scale === null && as.unit === 'g' && sold?.loose) {
      const counter = counterGrams(kitchen);
      step = Math.min(step, counter);
      found.push(...offCounter(as.grams, kitchen).map(({ grams }) => ({ grams, fixed: least * awkwardness })));
    }
    if (kitchen.scale === null && as.unit === 'g' && sold !== null) {
      found.push(...byPack(sold, as.grams, least));
      if (food.byEye === 'only') inParts.push(...partsByEye(food, sold, as.grams, least));
    }
  };
  const isNear = (): boolean =>
    [...found, ...inParts].some(({ grams }) => Math.abs(Math.log(grams / wanted.grams)) <= 0.35);
  usual(wanted, 0);
  sachetsInto(found, sold);
  wholeInto(found, food, sold);
  pinchInto(found, food, kitchen, wanted, density);
  if (!isNear()) {
    evenShort = true;
    usual(wanted, 0);
    evenShort = false;
  }
  // What the usual tools do not come near to is measured by another kind, and then by any volume.
  if (!isNear() && wanted.unit !== 'g') usual({ ...wanted, unit: 'g' }, 3);
  if (!isNear()) for (const way of ['jug', 'cup', 'spoon']) add(way, 3);
  const near = found.filter(({ grams }) => grams >= wanted.grams * least && grams <= wanted.grams * most);
  for (const each of near) each.fixed += leftoverCost(each.grams, food, sold);
  near.push(...inParts.filter(({ grams }) => grams >= wanted.grams * least && grams <= wanted.grams * most));
  near.push(...packs);
  return { list: cheapestOfEach(near), setsBatch: false, step: Number.isFinite(step) ? step : 0 };
}

/** What the author counts in packs is counted so, where a line of its own says so. */
function countedPacks(food: Food, sold: Sold | null, { unit, grams, food: native }: Wanted): Candidate[] {
  if (unit !== 'pack' || native !== food || sold === null || sold.loose || sold.tap) return [];
  return sold.packs.flatMap((pack) =>
    upTo(grams, Number(pack.grams), 1)
      .filter((size) => pack.unit !== 'count' && size / Number(pack.grams) <= 12 + 1e-9)
      .map((size) => ({
        grams: size,
        fixed: isUsual(pack, size / Number(pack.grams), sold.packs) ? 0 : otherPack,
      })),
  );
}

/** Whether all labels say weights, or all volumes. */
function labelsAreIn(dimension: 'mass' | 'volume', sold: Sold | null): boolean {
  const masses = ['g', 'kg', 'oz', 'lb', 'mg'];
  return sold?.packs.every(({ unit }) => unit !== 'count' && masses.includes(unit) === (dimension === 'mass')) ?? false;
}

/** Packs up to 3 % under an amount count as enough of it, but a line asks for no more than half a per cent above what they hold. */
function isMoreThanBought(grams: number, sold: Sold | null): boolean {
  if (sold === null || sold.packs.length === 0 || sold.loose || sold.tap) return false;
  const sizes = sold.packs.map((pack) => Number(pack.grams));
  return leastLeft(grams, sizes).bought < grams * 0.995;
}

function sizesOf(way: string, kitchen: Kitchen, sold: Sold | null): Size[] {
  if (way === 'spoon') return spoons(kitchen);
  if (way === 'cup') return cups(kitchen);
  if (way === 'jug') return marks(kitchen.jug);
  if (way === 'scale') return marks(kitchen.scale).map(({ size }) => ({ size, awkward: oddness(size) }));
  return cuts(sold?.packs.filter((pack) => pack.marks !== null) ?? []);
}

/** A food's ways of being measured: spoons for little, then as the kitchen says for what pours and for what does not. */
function waysFor(food: Food, kitchen: Kitchen, { grams, unit }: Wanted, density: number): string[] {
  const scale = marks(kitchen.scale)[0]?.size;
  const byWeight = unit === 'g' && scale !== undefined;
  const little = grams / density <= 3.75 * Number(kitchen.units.tbsp);
  const ways = (food.pours ? kitchen.measures.pours : kitchen.measures.dry).filter(
    (way) => way !== 'spoon',
  ) as string[];
  if (byWeight && !ways.includes('scale')) ways.push('scale');
  const light = scale !== undefined && grams < scale;
  if (light || (little && !byWeight)) ways.unshift('spoon');
  if (light && unit === 'ml' && !ways.includes('cup')) ways.push('cup');
  return ways;
}

interface Size {
  size: number;
  awkward: number;
}

/** Three teaspoons are the tablespoon of which the wrapper says what it is. */
function teaspoons({ spoons: { tsp }, units }: Kitchen): Size[] {
  return inSet(tsp, Number(units.tsp)).filter(({ size }) => Math.abs(size / Number(units.tbsp) - 1) > 1e-6);
}

function spoons({ spoons: { tsp, tbsp }, units }: Kitchen): Size[] {
  const [small, large] = [Number(units.tsp), Number(units.tbsp)];
  const sums = [1, 2]
    .filter((count) => count <= tbsp.wholes)
    .flatMap((tablespoons) =>
      [1, 2, 3]
        .filter((teaspoons) => teaspoons * small < large - 1e-6)
        .map((teaspoons) => ({ size: tablespoons * large + teaspoons * small, awkward: 3.5 })),
    );
  // A quarter more than all the teaspoons that are counted is as fussy.
  const few = inSet(tsp, small).map((each) =>
    each.size > tsp.wholes * small + 1e-6 && each.awkward > 0 ? { ...each, awkward: 3.5 } : each,
  );
  return [...few, ...inSet(tbsp, large), ...sums];
}

function cups({ cups: set, units, writes }: Kitchen): Size[] {
  if (set === null) return [];
  const quart = writes.volume.includes('quart') ? Number(units.quart) : Number.NaN;
  const plain = inSet(set, Number(units.cup));
  const added = [1, 2, 3].slice(0, set.plusTablespoons);
  return [
    ...plain,
    ...plain.flatMap(({ size }) => added.map((n) => ({ size: size + n * Number(units.tbsp), awkward: 3.5 }))),
    ...quartsPast(set.wholes, quart),
  ];
}

/** Quarts where the cups end: by a quarter up to 4, then by a half up to 12. */
function quartsPast(cups: number, each: number): Size[] {
  if (Number.isNaN(each)) return [];
  const quarters = Array.from({ length: 48 }, (_, at) => at + 1).filter(
    (count) => count > cups && (count <= 16 || count % 2 === 0),
  );
  return quarters.map((count) => ({ size: (count / 4) * each, awkward: count % 2 === 0 ? 0 : 1 }));
}

function inSet({ wholes, fractions }: MeasureSet, each: number): Size[] {
  const sizes: Size[] = [];
  for (let whole = 0; whole <= wholes; whole++) {
    if (whole > 0) sizes.push({ size: whole * each, awkward: 0 });
    for (const part of fractions) {
      sizes.push({ size: (whole + Number(part)) * each, awkward: Number(part) === 0.5 ? 0 : 1 });
    }
  }
  return sizes;
}

function marks(tool: Kitchen['jug'] | Kitchen['scale']): Size[] {
  const sizes = new Set<number>();
  for (const { from, to, step } of tool?.marks ?? []) {
    for (let at = Number(from); at <= Number(to) + 1e-9; at += Number(step)) sizes.add(at);
  }
  return [...sizes].sort((a, b) => a - b).map((size) => ({ size, awkward: 0 }));
}

/** Weights a cook would round: between 100 and 500 g by fives, and from 200 by tens, unless they are quarters of a hundred. */
function oddness(grams: number): number {
  if (grams < 100 || grams > 500 || grams % 25 === 0) return 0;
  if (grams % 10 !== 0) return 0.5;
  return grams < 200 ? 0 : 0.25;
}

/** Cuts by the marks on a wrapper, up to four of the largest pack; the first four marks are halved too. */
function cuts(packs: readonly Pack[]): Size[] {
  const [first, last] = [packs[0], packs.at(-1)];
  if (first === undefined || last === undefined) return [];
  const each = Number(first.marks?.grams);
  const wholes = Array.from({ length: Math.floor((4 * Number(last.grams)) / each + 1e-9) }, (_, at) => at + 1);
  return [
    ...[0.5, 1.5, 2.5, 3.5].map((count) => ({ size: count * each, awkward: 1 })),
    ...wholes.map((count) => ({ size: count * each, awkward: 0 })),
  ];
}

/** The distance between the marks around an amount. */
function gapIn(sizes: readonly Size[], at: number): number {
  const sorted = [...new Set(sizes.map(({ size }) => size))].sort((a, b) => a - b);
  const above = sorted.findIndex((size) => size >= at - 1e-9);
  if (above === 0) return sorted[0] ?? 0;
  if (above < 0) return (sorted.at(-1) ?? 0) - (sorted.at(-2) ?? 0);
  return (sorted[above] ?? 0) - (sorted[above - 1] ?? 0);
}

/** Quarters and thirds of a pack, alone or beside one or two whole ones: the rest of the last pack is left. */
function partsByEye(food: Food, { packs }: Sold, grams: number, awkward: number): Candidate[] {
  return packs.flatMap((pack) =>
    [0, 1, 2].flatMap((wholes) =>
      [1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4].flatMap((part) => {
        const size = (wholes + part) * Number(pack.grams);
        if (size < grams / 2 - 1e-9 || size > grams * 2 + 1e-9) return [];
        if (packs.some((each) => Number.isInteger(size / Number(each.grams)))) return [];
        const level = Math.max(awkward, wholes > 0 ? 2 : part === 1 / 2 ? 0 : 1);
        return [{ grams: size, fixed: level * awkwardness + remainderCost(food, wholes + 1, 1 - part) }];
      }),
    ),
  );
}

/** Whole packs of what is weighed by nobody at home. */
function byPack({ packs }: Sold, grams: number, awkward: number): Candidate[] {
  return packs.flatMap((pack) => {
    const [from, to] = [
      Math.max(1, Math.floor(grams / Number(pack.grams) / 2)),
      Math.ceil((2 * grams) / Number(pack.grams)),
    ];
    return Array.from({ length: Math.max(Math.min(to, 8) - from + 1, 0) }, (_, at) => ({
      grams: (from + at) * Number(pack.grams),
      fixed: awkward * awkwardness,
    }));
  });
}

/** Up to three sachets that are emptied, where other packs of the food are not: as good as a measure, but for an unusual size. */
function sachetsInto(list: Candidate[], sold: Sold | null): void {
  for (const pack of sold?.packs.filter(({ whole, unit }) => whole === 'yes' && unit !== 'count') ?? [])
    for (const count of [1, 2, 3])
      list.push({ grams: count * Number(pack.grams), fixed: isUsual(pack, count, sold?.packs ?? []) ? 0 : otherPack });
}

/** Up to three whole cartons of what stands in the fridge are a measure. */
function wholeInto(list: Candidate[], { keeps }: Food, sold: Sold | null): void {
  if (sold === null || sold.loose || sold.tap || keeps.where !== 'fridge' || keeps.days === null) return;
  for (const { unit, grams } of sold.packs) {
    const whole = [1, 2, 3].map((count) => ({ grams: count * Number(grams), fixed: 0 }));
    // What a tool measures as well is measured.
    const isMeasured = (each: Candidate): boolean =>
      list.some((other) => Math.abs(Math.log(other.grams / each.grams)) <= 0.005);
    if (unit !== 'count') list.push(...whole.filter((each) => !isMeasured(each)));
  }
}

/** Under three quarters of the smallest spoon of salt or spice: a pinch, half a spoon. */
function pinchInto(list: Candidate[], food: Food, kitchen: Kitchen, { grams }: Wanted, density: number): void {
  const smallest = Math.min(...spoons(kitchen).map(({ size }) => size));
  if ((food.role !== 'salt' && food.role !== 'seasoning') || !(grams / density < 0.75 * smallest)) return;
  list.push({ grams: (smallest / 2) * density, fixed: 3 * awkwardness, pinch: true });
}

function cheapestOfEach(list: readonly Candidate[]): Candidate[] {
  const sorted = [...list].sort((a, b) => a.grams - b.grams || a.fixed - b.fixed);
  return sorted.filter(({ grams }, at) => at === 0 || grams / (sorted[at - 1]?.grams ?? 0) > 1 + 1e-9);
}

/** What is left of the packs for an amount. */
function leftoverCost(grams: number, food: Food, sold: Sold | null): number {
  if (sold === null || sold.packs.length === 0 || sold.loose || sold.tap) return 0;
  const { bought, left } = leastLeft(
    grams,
    sold.packs.map((pack) => Number(pack.grams)),
  );
  return remainderCost(food, bought, left);
}

/** A share of what is bought, where it stands in the fridge: dearer if it goes off within the week, and more if there is any. */
function remainderCost({ keeps }: Food, bought: number, left: number): number {
  if (keeps.where !== 'fridge' || keeps.days === null) return 0;
  const cost = keeps.freezes ? 0.003 : keeps.days < 7 ? 0.01 : 0;
  return (cost * left) / bought + (left > bought / 100 && keeps.days < 14 ? 0.005 : 0);
}

/** Every way to buy enough (packs within 3 % count as equal): the least over, then the fewest packs. */
function leastLeft(grams: number, sizes: readonly number[]): { bought: number; left: number } {
  let best = { bought: 0, left: Number.POSITIVE_INFINITY, packs: Number.POSITIVE_INFINITY };
  const buy = (at: number, bought: number, packs: number): void => {
    const size = sizes[at];
    if (bought >= 0.97 * grams) {
      const left = Math.max(bought - grams, 0);
      if (left < best.left - 1e-9 || (left < best.left + 1e-9 && packs < best.packs)) best = { bought, left, packs };
      return;
    }
    if (size === undefined) return;
    for (let n = 0; n <= Math.ceil(grams / size); n++) buy(at + 1, bought + n * size, packs + n);
  };
  buy(0, 0, 0);
  return best;
}
