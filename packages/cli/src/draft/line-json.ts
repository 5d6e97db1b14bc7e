import {
  applyEdits,
  type Bought,
  dimensionOf,
  Exact,
  isVolumeUnit,
  type Kitchen,
  millilitresIn,
  type Stated,
  type Term,
  type Version,
  type VersionLine,
  writeStated,
} from '@retare/core';
import { isMerged, type RecipeReading } from 'remark-retare';
import { decimal } from './decimal.js';
import { exactWords, nativeWords } from './line-words.js';

/** A number as a decimal string of at most six places. */
export type Decimal = string;

/** A pack, as a shop labels it. */
interface JsonPack {
  count: Decimal;
  size: Decimal;
  unit: string;
  word: string;
}

/** One line of a version, with how it came about. */
export interface JsonLine {
  /** Line of the native line in the post. */
  line: number | null;
  part: string | null;
  /** The native line's word for its food. */
  food: string | null;
  /** The native amount, as written. */
  native: string | null;
  /** Batch factor × native, unrounded, in a unit of the version's: `222.5 ml`. */
  exact: string | null;
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
  /** The whole line as it is read in the version; null for a line whose food is had from another. */
  becomes: string | null;
  /** A signed fraction. */
  drift: Decimal | null;
  measurable: boolean;
  buyable: boolean;
  buy: { packs: JsonPack[]; looseGrams: Decimal | null } | null;
  /** What remains of the packs bought, and how many days it keeps: null where it outlasts any plan. */
  leftover: { grams: Decimal; days: Decimal | null } | null;
}

/** A line of a version and its reasons as data. */
export function lineJson(line: VersionLine, part: string | null, version: Version, reading: RecipeReading): JsonLine {
  const { kitchen } = version;
  const rules = line.problems.map(({ problem }) => problem.rule);
  const { bought, food } = line;
  return {
    line: reading.lines.get(line.line.key)?.paragraph.position?.start.line ?? null,
    part,
    food: line.line.reading.food?.text ?? null,
    native: nativeWords(line),
    exact: exactWords(line, version.batchFactor, kitchen),
    chosen: line.stated === null ? null : chosenJson(line, line.stated, kitchen),
    becomes: isMerged(line) ? null : applyEdits(line.line.text, line.edits),
    drift: decimal(line.drift),
    measurable: !rules.includes('unmeasurable'),
    buyable: !rules.includes('unbuyable'),
    buy: bought === null ? null : buyJson(bought),
    leftover:
      bought === null || food === null
        ? null
        : { grams: decimal(bought.leftoverGrams), days: decimal(food.keeps.days) },
  };
}

function buyJson({ packs, looseGrams }: Bought): NonNullable<JsonLine['buy']> {
  return {
    packs: packs.map(({ count, pack: { size, unit, word } }) => ({
      count: decimal(count),
      size: decimal(size),
      unit,
      word,
    })),
    looseGrams: decimal(looseGrams),
  };
}

function chosenJson(line: VersionLine, stated: Stated, kitchen: Kitchen): JsonLine['chosen'] {
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
    grams: decimal(line.chosen.grams),
    millilitres: decimal(line.chosen.millilitres),
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
