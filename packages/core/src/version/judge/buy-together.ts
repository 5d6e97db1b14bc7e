import { dimensionOf } from '../../amount/size.js';
import { type Stated, stateOne } from '../../amount/stated.js';
import { Exact, sumOf } from '../../exact.js';
import type { Food } from '../../food/food.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Bought } from '../../kitchen/shop/buy.js';
import { linesIn } from '../line/joined-line.js';
import type { PlacedProblem, VersionFood, VersionLine, VersionPart } from '../version.js';
import { awkwardLeftover } from './judge-buying.js';
import { amountSpan, writtenAs } from './judge-line.js';
import { shopFor } from './shop.js';

/** One food of one line, with an amount that something is bought for. */
interface Need {
  line: VersionLine;
  own: VersionFood;
  food: Food;
  stated: Stated;
}

/** What is bought at once for several lines. */
interface Together {
  needs: readonly Need[];
  bought: Bought;
}

const nothing: Bought = { packs: [], looseGrams: null, leftoverGrams: new Exact(0) };

/**
 * The parts of a version with one purchase for each food that several lines ask for: who makes a dough and a filling buys one carton
 * of cream for both. It stands at the first of the lines, and is what can be left over; at the others nothing more is bought.
 *
 * Whole packs are joined with the same packs only: a tin that a line names is a tin of its own.
 */
export function buyTogether(parts: readonly VersionPart[], kitchen: Kitchen): VersionPart[] {
  const joined = groupsIn(parts).flatMap((needs) => {
    const bought = needs.length > 1 ? purchaseFor(needs, kitchen) : null;
    return bought === null ? [] : [{ needs, bought }];
  });
  if (joined.length === 0) return [...parts];
  return parts.map((part) => ({
    ...part,
    lines: part.lines.map((line) => joined.reduce((same, each) => withPurchase(same, each, kitchen), line)),
  }));
}

function groupsIn(parts: readonly VersionPart[]): Need[][] {
  const groups = new Map<Food, Map<string, Need[]>>();
  for (const line of parts.flatMap(({ lines }) => lines.flatMap(linesIn))) {
    for (const own of [line, ...line.also]) {
      const { food, stated, bought } = own;
      if (food === null || stated === null || bought === null) continue;
      const kinds = groups.get(food) ?? new Map<string, Need[]>();
      groups.set(food, kinds);
      const kind = packOf(stated);
      kinds.set(kind, [...(kinds.get(kind) ?? []), { line, own, food, stated }]);
    }
  }
  return [...groups.values()].flatMap((kinds) => [...kinds.values()]);
}

function packOf({ pack }: Stated): string {
  return pack === null ? '' : `${pack.word} ${pack.size} ${pack.unit}`;
}

/** Counted together where all lines count the same, else by weight, ranges by their upper end. */
function purchaseFor(needs: readonly Need[], kitchen: Kitchen): Bought | null {
  const [first] = needs;
  const unit = first?.stated.statements[0]?.[0]?.unit;
  if (first === undefined || unit === undefined) return null;
  const grams = needs.every(({ own }) => own.chosen.grams !== null) ? sumOf(needs, mostGrams) : null;
  const isCounted = first.stated.pack !== null || dimensionOf(unit) === 'count';
  if (isCounted && needs.every(({ stated }) => stated.statements[0]?.[0]?.unit === unit)) {
    const count = sumOf(needs, ({ stated }) => mostOf(stated));
    const stated = { ...first.stated, statements: stateOne({ low: count, high: null, unit }).statements };
    return shopFor(stated, { grams, millilitres: null }, first.food, kitchen);
  }
  if (grams === null || first.stated.pack !== null) return null;
  const weight = stateOne({ low: grams, high: null, unit: 'g' });
  return shopFor(weight, { grams, millilitres: null }, first.food, kitchen);
}

function mostOf({ statements }: Stated): Exact {
  const term = statements[0]?.[0];
  return term?.high ?? term?.low ?? new Exact(0);
}

function mostGrams({ own, stated }: Need): Exact {
  const low = stated.statements[0]?.[0]?.low;
  const grams = own.chosen.grams ?? new Exact(0);
  return low === undefined || low.isZero() ? grams : grams.times(mostOf(stated)).dividedBy(low);
}

/** A line, and those that its words count beside it, with what is bought together. Its problems hold those of all of them. */
function withPurchase(line: VersionLine, together: Together, kitchen: Kitchen): VersionLine {
  const { needs, bought } = together;
  const all = linesIn(line).map((each) => each.line);
  const here = needs.filter((need) => all.includes(need.line.line));
  const [first] = needs;
  if (here.length === 0 || first === undefined) return line;
  const own = here.filter((need) => need.line.line === line.line);
  const change = <T extends VersionFood>(food: T): T => {
    const need = own.find((each) => each.food === food.food && each.stated === food.stated);
    if (need === undefined) return food;
    return need === first ? { ...food, bought } : { ...food, bought: nothing, boughtWith: first.line.line };
  };
  const problems = line.problems.filter(
    ({ problem }) => problem.rule !== 'awkward-leftover' || problem.food !== first.food,
  );
  const left = here.includes(first) ? leftBy(first, together, kitchen) : [];
  return {
    ...change(line),
    ...(line.plus === undefined ? {} : { plus: withPurchase(line.plus, together, kitchen) }),
    also: line.also.map(change),
    problems: [...problems, ...left],
  };
}

function leftBy({ line, food }: Need, { needs, bought }: Together, kitchen: Kitchen): PlacedProblem[] {
  const amounts = needs.map((need) => writtenAs(need.line.line, need.stated, kitchen));
  const problem = awkwardLeftover(amounts.join(' + '), food, bought);
  return problem === null ? [] : [{ problem, span: amountSpan(line.line) }];
}
