import { readYield, wholeBehind, type YieldPart } from '../../amount/mention/read-yield.js';
import type { PanReading } from '../../amount/reading.js';
import { centimetresIn, isLengthUnit, isMassUnit } from '../../amount/size.js';
import type { MassUnit, VolumeUnit } from '../../amount/unit.js';
import { writeTerm } from '../../amount/write.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { lengthFor } from '../../kitchen/measure/length.js';
import { roughSize } from '../../kitchen/measure/rough-size.js';
import { unitRatio } from '../../kitchen/measure/unit-ratio.js';
import { plainSides } from '../../kitchen/pan/pan-size.js';
import type { Edit } from '../../version/version.js';
import { applyEdits } from '../../version/words/edit.js';

/** Where and how large a version is. */
export interface YieldOf {
  batch: Exact;
  native: Kitchen;
  kitchen: Kitchen;
  /** The pans that were chosen, each with its size there: a 9-inch cake comes out of the 9-inch pan. */
  pans: readonly { written: PanReading; size: string }[];
}

/** Part of a serving or piece that nobody sees on a plate: 3.96 servings are about 4, and not 3. */
const atTheTable = '0.05';
/** A batch that differs by less feeds as many and is cut into as many, as packs that differ by less are equal. Common practice, no source. */
const sameBatch = new Exact('0.03');
/** Two to so many loaves stay as many, each a little larger or smaller, where another number is no nearer. */
const mostWholes = 4;

/**
 * What a version makes. Servings and pieces are rounded down to a whole, but for a twentieth of one or 3 % of the batch, with "about"; one loaf or cake stays
 * one, a little larger or smaller beyond 5 %. What is told in cups, by weight or by length is told in the kitchen's own measures.
 */
export function makesAt(makes: string | null, version: YieldOf): string | null {
  if (makes === null) return makes;
  const parts = readYield(makes);
  const edits = [...parts.flatMap((part) => editFor(part, makes, version)), ...aLittle(parts, makes, version.batch)];
  return edits.length === 0 ? makes : applyEdits(makes, edits).replace(articles, articleFor);
}

const articles = /\b([aA])n? (?=(\d{1,4}))/g;

/** `an 8 in cake` for `a 20 cm cake`. */
function articleFor(_: string, article: string, number: string): string {
  return `${article}${/^(?:8|1[18]$)/.test(number) ? 'n' : ''} `;
}

function editFor(part: YieldPart, makes: string, version: YieldOf): Edit[] {
  const text = textFor(part, makes, version);
  return text === null ? [] : [{ ...part.span, text }];
}

/** What stands for a part; null where it stays as it is written. */
function textFor(part: YieldPart, makes: string, version: YieldOf): string | null {
  switch (part.kind) {
    case 'count':
      return countText(part, makes, version.batch);
    case 'total':
    case 'each':
      return sizeText(part, makes, version);
    case 'size':
      return lengthText(part, makes, version);
  }
}

type Count = Extract<YieldPart, { kind: 'count' }>;

function countText(part: Count, makes: string, batch: Exact): string | null {
  if (batch.equals(1) || staysAsMany(part, batch)) return null;
  const [low, high] = [pieces(part.low, batch), part.high === null ? null : pieces(part.high, batch)];
  const range = high === null || high.equals(low) ? low.toString() : `${low}–${high}`;
  return `${aboutBefore(part, makes)}${range}`;
}

function pieces(count: Exact, batch: Exact): Exact {
  if (batch.minus(1).abs().lessThanOrEqualTo(sameBatch)) return count;
  return Exact.max(count.times(batch).plus(atTheTable).floor(), 1);
}

/** A loaf is made larger, and no half of another is baked. */
function staysAsMany({ whole, low, high }: Count, batch: Exact): boolean {
  if (!whole || high !== null || low.greaterThan(mostWholes)) return false;
  return low.times(batch).minus(low).abs().lessThan('0.5') || pieces(low, batch).equals(low);
}

type Sized = Extract<YieldPart, { kind: 'total' | 'each' }>;

function sizeText(part: Sized, makes: string, { batch, native, kitchen }: YieldOf): string | null {
  const { low, high, unit } = part;
  const factor = part.kind === 'total' ? batch : new Exact(1);
  if (factor.equals(1) && isRead(unit, native, kitchen)) return null;
  const scaled = { low: low.times(factor), high: high?.times(factor) ?? null, unit };
  const there = roughSize(scaled, native, kitchen);
  if (there === null) return null;
  const term = writeTerm(there);
  return part.kind === 'each' ? beside(term, part, makes) : `${aboutBefore(part, makes)}${term}`;
}

/** Spoons and cups that differ by less are the same to a cook. */
const sameUnit = new Exact('0.02');

/** A unit that the kitchen reads, and means the same by. */
function isRead(unit: MassUnit | VolumeUnit, native: Kitchen, kitchen: Kitchen): boolean {
  const { mass, volume } = kitchen.writes;
  if (isMassUnit(unit)) return mass.includes(unit);
  if (!volume.includes(unit)) return false;
  return unitRatio(unit, kitchen, native)?.minus(1).abs().lessThanOrEqualTo(sameUnit) ?? false;
}

type Long = Extract<YieldPart, { kind: 'size' }>;

function lengthText(part: Long, makes: string, { kitchen, pans }: YieldOf): string | null {
  const { sides, high, low, unit } = part;
  const pan = pans.find(({ written }) => isPanOf(part, written));
  if (pan !== undefined) return beside(pan.size, part, makes);
  if ((unit === 'in') === (kitchen.writes.length === 'in')) return null;
  if (sides.length > 1 || part.whole) return beside(plainSides(sides, unit, kitchen), part, makes);
  const from = lengthFor(low, unit, kitchen);
  const to = high === null ? null : lengthFor(high, unit, kitchen);
  return beside(writeTerm({ ...from, high: to?.unit === from.unit ? to.low : null }), part, makes);
}

/** Whether what is made has the sides of a pan: the pan that is baked in says its size. */
function isPanOf({ sides, unit, whole }: Long, written: PanReading): boolean {
  if (!whole || !isLengthUnit(written.unit) || written.sides.length !== sides.length) return false;
  const each = centimetresIn(written.unit).dividedBy(centimetresIn(unit));
  const sorted = [...sides].sort((a, b) => a.comparedTo(b));
  return written.sides.every((side, at) =>
    side
      .times(each)
      .minus(sorted[at] ?? 0)
      .abs()
      .lessThan('0.05'),
  );
}

/** A size right behind a number is hyphened, so that nobody reads one number of both: `24 5-cm biscuits`. */
function beside(size: string, { span }: YieldPart, makes: string): string {
  const isBehindFigures = /\d\s+$/.test(makes.slice(Math.max(0, span.start - 3), span.start));
  return isBehindFigures ? size.replace(/^(\S+) (\S+)$/u, '$1-$2') : size;
}

/** `about 4 servings`, unless the author says so already. */
function aboutBefore({ approx, span }: YieldPart, makes: string): string {
  return approx || /\b(?:about|around) ?$/i.test(makes.slice(Math.max(0, span.start - 8), span.start)) ? '' : 'about ';
}

/** What is said of a loaf or cake that is made larger or smaller, where its clause ends: `1 loaf, a little smaller (about 15 slices)`. */
function aLittle(parts: readonly YieldPart[], makes: string, batch: Exact): Edit[] {
  if (batch.minus(1).abs().lessThanOrEqualTo('0.05')) return [];
  const kept = parts.filter((part) => part.kind === 'count' && part.whole && staysAsMany(part, batch));
  const isAlone = parts.every(({ kind }) => kind === 'size' || kind === 'each');
  const noun = wholeBehind(makes, kept[0]?.span.end ?? 0);
  if (noun === null || (kept.length === 0 && !isAlone)) return [];
  const end = noun + (/[,;(]/.exec(makes.slice(noun))?.index ?? makes.length - noun);
  const at = makes.slice(0, end).trimEnd().length;
  const several = kept.some((part) => part.low.greaterThan(1)) ? 'each ' : '';
  return [{ start: at, end: at, text: `, ${several}a little ${batch.greaterThan(1) ? 'larger' : 'smaller'}` }];
}
