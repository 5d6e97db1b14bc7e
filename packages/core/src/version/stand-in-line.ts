import type { Stated } from '../amount/stated.js';
import { writeStated } from '../amount/write.js';
import type { Exact } from '../exact.js';
import type { Foods } from '../food/find.js';
import type { Food } from '../food/food.js';
import { nameIn } from '../food/name.js';
import { fromGrams, nothing, type Weighed } from '../food/weigh.js';
import { soldIn } from '../kitchen/buy.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Line } from '../recipe/recipe.js';
import { problemsOfWords } from './about-words.js';
import { type Conversion, convertWeighed } from './convert-amount.js';
import { amountEdits } from './edit.js';
import { judgeLine } from './judge-line.js';
import type { Edit, LineNote, VersionLine } from './version.js';
import { type WeighedAmount, weighStated } from './weigh-line.js';
import { furtherInWords } from './words-in-line.js';

/** One food of a stand-in with its amount. */
interface StandInPart {
  food: Food;
  stated: Stated;
  weighed: Weighed;
}

/**
 * A line whose food is not sold in the kitchen, with what takes its place by weight.
 *
 * @returns Null where the food is sold, where nothing takes its place, or where its weight is not known.
 */
export function standInLine(
  line: Line,
  amount: WeighedAmount | null,
  conversion: Conversion,
  tolerance: Exact,
  foods: Foods,
): VersionLine | null {
  const { kitchen } = conversion;
  const parts = amount === null ? [] : partsFor(line, amount, conversion, foods);
  const first = parts[0];
  if (first === undefined || amount === null || line.food === null) return null;
  const judged = parts.map((part) => judgeLine(line, part, kitchen, tolerance));
  return {
    line,
    food: first.food,
    edits: [...inWords(line, parts, kitchen), ...furtherInWords(line, conversion)],
    stated: first.stated,
    native: amount.low,
    chosen: total(parts),
    drift: null,
    bought: judged[0]?.bought ?? null,
    problems: [...problemsOfWords(line, conversion.native), ...judged.flatMap(({ problems }) => problems)],
    notes: [noteFor(line.food, parts, conversion)],
  };
}

/** What all foods of a stand-in weigh together: a share of the line is a share of their mixture. */
function total(parts: readonly StandInPart[]): Weighed {
  const sum = (pick: (weighed: Weighed) => Exact | null): Exact | null =>
    parts.reduce<Exact | null>((acc, { weighed }) => {
      const more = pick(weighed);
      return acc === null || more === null ? null : acc.plus(more);
    }, nothing);
  return { grams: sum(({ grams }) => grams), millilitres: sum(({ millilitres }) => millilitres) };
}

function partsFor(line: Line, { low, high }: WeighedAmount, conversion: Conversion, foods: Foods): StandInPart[] {
  const { kitchen, ownWeights } = conversion;
  const sold = line.food === null ? null : soldIn(line.food, kitchen.id);
  if (sold === null || sold.sold || low.grams === null || line.name === null) return [];
  const standIn = sold.standIns.find(({ parts }) => parts.every(({ food }) => foods.has(food)));
  return (standIn?.parts ?? []).flatMap(({ food: id, share }) => {
    const food = foods.get(id);
    if (food === undefined) return [];
    const weighing = { food, kitchen, prep: '', sizeWord: '', ownWeights };
    const shareOf = ({ grams }: Weighed): Weighed =>
      grams === null
        ? { grams, millilitres: null }
        : fromGrams(grams.times(share), food, { units: kitchen.units, prep: '', stated: ownWeights });
    const ends = { low: shareOf(low), high: high === null ? null : shareOf(high) };
    const stated = convertWeighed(line.reading, ends, food, conversion);
    return [{ food, stated, weighed: weighStated(stated, weighing)?.low ?? ends.low }];
  });
}

/** `½ cup half-and-half` becomes `60 ml whole milk and 60 ml double cream`. */
function inWords(line: Line, parts: readonly StandInPart[], kitchen: Kitchen): Edit[] {
  const [first, ...others] = parts;
  if (first === undefined || line.name === null) return [];
  const also = others.map(
    ({ food, stated }) => ` and ${writeStated(stated, kitchen)} ${nameWith(stated, food, kitchen.id)}`,
  );
  const name = `${nameWith(first.stated, first.food, kitchen.id)}${also.join('')}`;
  return [...amountEdits(line.reading, writeStated(first.stated, kitchen)), { ...line.name.span, text: name }];
}

/** The kitchen's name beside an amount: `1 green chilli`, `½ green chilli`, but `12 g green chillies`. */
export function nameWith({ statements, pack }: Stated, food: Food, kitchen: string): string {
  const term = statements[0]?.[0];
  const { one, many } = nameIn(food, kitchen);
  return pack === null && term?.unit === 'count' && !(term.high ?? term.low).greaterThan(1) ? one : many;
}

/** What it stands in for, and the allergens that it adds. */
function noteFor(food: Food, parts: readonly StandInPart[], { native, kitchen }: Conversion): LineNote {
  const allergens = parts.flatMap((part) => part.food.allergens).filter((each) => !food.allergens.includes(each));
  return {
    kind: 'stand-in',
    food: nameIn(food, native.id).many,
    kitchen: kitchen.name,
    allergens: [...new Set(allergens)],
  };
}
