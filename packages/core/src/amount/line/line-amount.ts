import { Exact } from '../../exact.js';
import { type ReadPack, readPack } from '../quantity/pack-reading.js';
import { isMeasured, readStatement, type Statement } from '../quantity/statement.js';
import { passAdjectives } from '../quantity/unit-behind-adjectives.js';
import type { KitchenUnits } from '../size.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';

/** The amount that a line begins with or ends in, with its pack. */
export interface LineAmount {
  low: Exact;
  high: Exact | null;
  unit: UnitId;
  approx: boolean;
  pack: ReadPack | null;
  /** Token indexes: from the words for about, from the number, and behind the last unit or container, without `of`. */
  start: number;
  first: number;
  next: number;
  statement: Statement;
}

/** Reads an amount with its pack at an index; `null` where none stands. */
export function readLineAmount(tokens: Tokens, index: number, kitchen: KitchenUnits): LineAmount | null {
  const statement = readStatement(tokens, index, kitchen);
  if (statement === null) return null;
  const found = readPack(tokens, statement, kitchen);
  const pack = found !== null && isArticleOfMeasure(statement, found) ? null : found;
  // `a 2-inch piece`: the article stays where it is.
  if (pack === null && statement.quantity.article && statement.quantity.unitWord === null) {
    const measure = readStatement(tokens, passAdjectives(tokens, statement.next), kitchen);
    if (measure !== null && isMeasured(measure.unit) && !measure.quantity.bare)
      return { ...measure, pack, statement: measure };
  }
  const { low, high, unit, approx, start, first, next } = statement;
  if (pack === null) return { low, high, unit, approx, pack, start, first, next, statement };
  return {
    low: pack.count ?? new Exact(1),
    high: pack.countHigh,
    unit: pack.unit,
    approx: pack.approx,
    pack,
    start: pack.start,
    first: pack.first,
    next: pack.next,
    statement,
  };
}

/** `a scant ½ cup honey`: no piece of food is as large as so many spoons or cups, so that the article counts nothing. */
function isArticleOfMeasure({ quantity }: Statement, pack: ReadPack): boolean {
  const filled = pack.sizeUnit === 'cup' || pack.sizeUnit === 'tbsp' || pack.sizeUnit === 'tsp';
  return quantity.article && pack.word === '' && pack.unit === 'count' && filled;
}
