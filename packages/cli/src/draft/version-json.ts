import {
  applyEdits,
  type Bought,
  isVolumeUnit,
  type Kitchen,
  millilitresIn,
  type Reauthored,
  type Stated,
  type Version,
  type VersionLine,
  type VersionMention,
  writeStated,
} from '@retare/core';
import { isMerged, type RecipeReading } from 'remark-retare';
import { decimal } from './decimal.js';
import { exactWords, nativeWords } from './line-words.js';
import { changeWords, obstacleWords } from './obstacle-words.js';

/** A number as a decimal string of at most six places. */
type Decimal = string;

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
  leftover: { grams: Decimal; days: number | null } | null;
}

/** A version with all its reasons. */
export interface JsonVersion {
  kitchen: string;
  standing: Version['standing'];
  anchor: string | null;
  batchFactor: Decimal;
  makes: string | null;
  lines: JsonLine[];
  ratios: { name: string; part: string | null; native: Decimal; version: Decimal; limit: Decimal }[];
  pans: { native: string; version: string; count: number; depthDrift: Decimal; caution: boolean }[];
  ovens: { native: string; version: string }[];
  cores: { native: string; version: string; of: string | null; hold: string | null }[];
  /** What is minimised; null where a line has no amount at all. */
  cost: Decimal | null;
  runnerUp: { batchFactor: Decimal; anchor: string | null; cost: Decimal } | null;
  infeasible: {
    because: { kind: 'no-amount' | 'ratio'; text: string }[];
    leastChange: { name: string; part: string | null; limit: Decimal; text: string } | null;
  } | null;
}

/** A version and its reasons as data. */
export function versionJson(result: Reauthored, reading: RecipeReading): JsonVersion {
  const { version, runnerUp } = result;
  const mentions = version.steps.flatMap((steps) => steps.mentions);
  return {
    kitchen: version.kitchen.id,
    standing: version.standing,
    anchor: result.anchor,
    batchFactor: decimal(version.batchFactor),
    makes: result.makes,
    lines: version.parts.flatMap(({ part, lines }) =>
      lines.map((line) => lineJson(line, part.native.label, version, reading)),
    ),
    ratios: result.ratios.map(({ name, part, native, version: here, limit }) => ({
      name,
      part,
      native: decimal(native),
      version: decimal(here),
      limit: decimal(limit),
    })),
    pans: result.pans.map(({ native, version: here, count, depthDrift, caution }) => ({
      native,
      version: here,
      count,
      depthDrift: decimal(depthDrift),
      caution,
    })),
    ovens: mentions.flatMap(({ mention, text }) =>
      mention.kind === 'oven' ? [{ native: mention.text, version: text }] : [],
    ),
    cores: mentions.flatMap(coreJson),
    cost: decimal(result.cost as number | null),
    runnerUp:
      runnerUp === null
        ? null
        : { batchFactor: decimal(runnerUp.batchFactor), anchor: runnerUp.anchor, cost: decimal(runnerUp.cost) },
    infeasible: infeasibleJson(result),
  };
}

function coreJson({ mention, text, hold }: VersionMention): JsonVersion['cores'] {
  if (mention.kind !== 'core') return [];
  return [{ native: mention.text, version: text, of: mention.of, hold: hold === '' ? null : hold }];
}

function infeasibleJson({ infeasible, version }: Reauthored): JsonVersion['infeasible'] {
  if (infeasible === null) return null;
  const { because, leastChange } = infeasible;
  return {
    because: because.map((obstacle) => ({ kind: obstacle.kind, text: obstacleWords(obstacle, version.kitchen) })),
    leastChange:
      leastChange === null
        ? null
        : { ...leastChange, limit: decimal(leastChange.limit), text: changeWords(leastChange) },
  };
}

function lineJson(line: VersionLine, part: string | null, version: Version, reading: RecipeReading): JsonLine {
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
    leftover: bought === null || food === null ? null : { grams: decimal(bought.leftoverGrams), days: food.keeps.days },
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
  const counted = pack !== null || !isMeasuredIn(first.unit);
  return {
    text: writeStated(stated, kitchen),
    low: decimal(
      terms.reduce((sum, { low, unit }) => sum.plus(low.times(unitsIn(unit, first.unit, kitchen))), first.low.times(0)),
    ),
    high: decimal(first.high),
    unit: first.unit,
    grams: decimal(line.chosen.grams),
    millilitres: decimal(line.chosen.millilitres),
    count: counted ? decimal(first.low) : null,
    packs:
      pack === null ? [] : [{ count: decimal(first.low), size: decimal(pack.size), unit: pack.unit, word: pack.word }],
  };
}

function isMeasuredIn(unit: string): boolean {
  return [
    'g',
    'kg',
    'mg',
    'oz',
    'lb',
    'ml',
    'cl',
    'dl',
    'l',
    'tsp',
    'tbsp',
    'cup',
    'floz',
    'pint',
    'quart',
    'gallon',
  ].includes(unit);
}

/** How many of one unit another is: a tablespoon is a sixteenth of a cup. */
function unitsIn(
  unit: Stated['statements'][number][number]['unit'],
  whole: typeof unit,
  { units }: Kitchen,
): number | ReturnType<NonNullable<VersionLine['drift']>['dividedBy']> {
  if (unit === whole || !isVolumeUnit(unit) || !isVolumeUnit(whole)) return 1;
  const [own, other] = [millilitresIn(unit, units), millilitresIn(whole, units)];
  return own === null || other === null ? 1 : own.dividedBy(other);
}
