import {
  applyEdits,
  dimensionOf,
  Exact,
  foodsIn,
  isVolumeUnit,
  type Kitchen,
  linesIn,
  millilitresIn,
  type Stated,
  type Term,
  type Version,
  type VersionFood,
  type VersionLine,
  writeStated,
} from '@retare/core';
import { isMerged, type RecipeReading } from 'remark-retare';
import { type Decimal, decimal } from '../decimal.js';
import { isInDoubt } from './in-doubt.js';
import { exactAmount, lineNumber, nativeWords, piecesToBuy, standInName } from './line-words.js';

/** A pack, as a shop labels it. */
interface JsonPack {
  count: Decimal;
  size: Decimal;
  unit: string;
  word: string;
}

/** One food of one line of a version, with how it came about: a stand-in of two foods gives two of them. */
export interface JsonLine {
  /** Line of the native line in the post. */
  line: number | null;
  part: string | null;
  /** The native line's word for its food. */
  food: string | null;
  /** What the version's kitchen calls the food that takes its place; null where it is the food itself. */
  standIn: string | null;
  /** Allergens that what takes the line's place adds, all its foods together. */
  allergensAdded: string[];
  /** The native amount, as written. */
  native: string | null;
  /** Batch factor × native, before it is landed: in millilitres where the version measures by volume, in ounces where its shops weigh so. */
  exact: { low: Decimal; high: Decimal | null; unit: string } | null;
  chosen: {
    text: string;
    low: Decimal;
    high: Decimal | null;
    unit: string;
    grams: Decimal | null;
    millilitres: Decimal | null;
    /** How many packs or pieces; null for what is measured. */
    count: Decimal | null;
    packs: JsonPack[];
  } | null;
  /** The whole line as it is read in the version; null where the food is had from another line's amount. */
  becomes: string | null;
  /** A signed fraction. */
  drift: Decimal | null;
  /** Null: not known, for a food that the larder does not have. */
  measurable: boolean | null;
  buyable: boolean | null;
  /** What the shop weighs off, or how many it sells singly, where no packs are bought. */
  buy: { packs: JsonPack[]; looseGrams: Decimal | null; pieces: Decimal | null } | null;
  /** What remains of the packs bought, and how many days it keeps: null where it outlasts any plan. */
  leftover: { grams: Decimal; days: Decimal | null } | null;
}

/** A line of a version and its reasons as data, an entry for each of its foods. */
export function lineJson(line: VersionLine, part: string | null, version: Version, reading: RecipeReading): JsonLine[] {
  const place = lineNumber(line.line, reading);
  return linesIn(line).flatMap((each) => foodsJson(each, place, part, version));
}

function foodsJson(line: VersionLine, place: number | null, part: string | null, version: Version): JsonLine[] {
  const { kitchen } = version;
  const base = {
    line: place,
    part,
    food: line.line.reading.food?.text ?? null,
  };
  return foodsIn(line).map((own): JsonLine => {
    const { bought, food, stated } = own;
    const isMissing = isMerged(line) || (stated === null && own !== line);
    const exact = exactAmount(line, own, version.batchFactor, kitchen);
    return {
      ...base,
      standIn: standInName(line, own, kitchen),
      allergensAdded: line.notes.flatMap((note) => (note.kind === 'stand-in' ? note.allergens : [])),
      native: nativeWords(line),
      exact: exact === null ? null : { low: decimal(exact.low), high: decimal(exact.high), unit: exact.unit },
      chosen: stated === null ? null : chosenJson(own, stated, kitchen),
      becomes: isMissing ? null : applyEdits(line.line.text, own.alone).trim(),
      drift: decimal(own.drift),
      measurable: verdict(line, own, 'unmeasurable', kitchen),
      buyable: verdict(line, own, 'unbuyable', kitchen),
      buy: buyJson(own, kitchen),
      leftover:
        bought === null || food === null
          ? null
          : { grams: decimal(bought.leftoverGrams), days: decimal(food.keeps.days) },
    };
  });
}

/** Whether a food of a line can be measured, or bought; null where the larder does not know. */
function verdict(
  line: VersionLine,
  own: VersionFood,
  rule: 'unmeasurable' | 'unbuyable',
  kitchen: Kitchen,
): boolean | null {
  const found = line.problems.some(({ problem }) => problem.rule === rule && problem.food === own.food);
  if (found) return false;
  return own.food === null && isInDoubt(own, rule, kitchen) ? null : true;
}

function buyJson(own: VersionFood, kitchen: Kitchen): JsonLine['buy'] {
  const pieces = piecesToBuy(own, kitchen);
  if (own.bought === null) return pieces === null ? null : { packs: [], looseGrams: null, pieces: decimal(pieces) };
  const { packs, looseGrams } = own.bought;
  return {
    packs: packs.map(({ count, pack: { size, unit, word } }) => ({
      count: decimal(count),
      size: decimal(size),
      unit,
      word,
    })),
    looseGrams: decimal(looseGrams),
    pieces: null,
  };
}

function chosenJson(own: VersionFood, stated: Stated, kitchen: Kitchen): JsonLine['chosen'] {
  const terms = stated.statements[0] ?? [];
  const [first] = terms;
  if (first === undefined) return null;
  const { pack } = stated;
  const total = terms.reduce(
    (sum, { low, unit }) => sum.plus(low.times(unitsIn(unit, first.unit, kitchen))),
    new Exact(0),
  );
  const counted = pack !== null || dimensionOf(first.unit) === 'count';
  return {
    text: writeStated(stated, kitchen),
    low: decimal(total),
    high: decimal(first.high),
    unit: first.unit,
    grams: decimal(own.chosen.grams),
    millilitres: decimal(own.chosen.millilitres),
    count: counted ? decimal(first.low) : null,
    packs:
      pack === null ? [] : [{ count: decimal(first.low), size: decimal(pack.size), unit: pack.unit, word: pack.word }],
  };
}

/** How many of one unit another is: a tablespoon is a sixteenth of a cup. */
function unitsIn(unit: Term['unit'], whole: Term['unit'], { units }: Kitchen): Exact {
  const same = new Exact(1);
  if (unit === whole || !isVolumeUnit(unit) || !isVolumeUnit(whole)) return same;
  const [own, other] = [millilitresIn(unit, units), millilitresIn(whole, units)];
  return own === null || other === null ? same : own.dividedBy(other);
}
