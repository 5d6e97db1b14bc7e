import type { Exact } from '../exact.js';
import { type Fill, fillIn } from './fill.js';
import type { LineReading, PackSize, Quantity } from './reading.js';
import type { UnitId } from './unit.js';

/** One number or range of a unit. */
export interface Term {
  low: Exact;
  high: Exact | null;
  unit: UnitId;
  /** How full a spoon or cup is, in the author's word (`heaped`); level where there is none. */
  fill?: Fill | null;
  /** The larger unit that the author's words name beside `unit`, where they are a sum. */
  beside?: UnitId;
}

/** What stands on a pack; `word` is empty for pieces. */
interface PackLabel {
  size: Exact;
  unit: UnitId;
  word: string;
}

/** An amount as it stands in a version. */
export interface Stated {
  /** The same quantity once or more, each a sum of terms (`1 cup` + `2 tbsp`). First statement first. */
  statements: Term[][];
  /** Size of each thing counted, with the upper end of a range (`4 (6 to 8-oz) fillets`). */
  pack: (PackLabel & { sizeHigh?: Exact | null }) | null;
  /** Size class of counted eggs, where it has to be named. */
  eggSize: string | null;
  approx: boolean;
  /** What is added to it: `1 (14-oz) can` and `¼ cup`. */
  plus?: Stated;
}

/** What a line says, without its places; null for a line with no amount. */
export function statedIn(reading: LineReading): Stated | null {
  if (reading.amounts[0] === undefined) return null;
  const { pack, plus, text } = reading;
  const stated = stateAll(reading.amounts, pack, text);
  return plus === undefined ? stated : { ...stated, plus: stateAll([plus.amount], plus.pack, text) };
}

function stateAll(amounts: readonly Quantity[], pack: PackSize | null, text: string): Stated {
  return {
    statements: amounts.map(({ low, high, unit, span, fill, beside }) => [
      {
        low,
        high,
        unit,
        fill: fill ?? fillIn(text.slice(span.start, span.end), unit),
        ...(beside === undefined ? {} : { beside }),
      },
    ]),
    pack: pack === null ? null : { size: pack.size, sizeHigh: pack.sizeHigh, unit: pack.unit, word: pack.word },
    eggSize: null,
    approx: amounts[0]?.approx ?? false,
  };
}

/** A plain statement of one term. */
export function stateOne(term: Term, approx = false): Stated {
  return { statements: [[term]], pack: null, eggSize: null, approx };
}

/** A number of packs or things of a size each: `2 × 400 g tins`. */
export function statePacks(counted: Term, { size, unit, word }: PackLabel, approx = false): Stated {
  return { ...stateOne(counted, approx), pack: { size, unit, word } };
}

/** An amount without the further statements of it. */
export function firstStatement(stated: Stated): Stated {
  return { ...stated, statements: stated.statements.slice(0, 1) };
}

/** Whether two amounts read the same. */
export function sameStated(one: Stated | null, other: Stated | null): boolean {
  if (one === null || other === null) return one === other;
  return (
    one.eggSize === other.eggSize &&
    one.approx === other.approx &&
    sameStated(one.plus ?? null, other.plus ?? null) &&
    samePack(one.pack, other.pack) &&
    one.statements.length === other.statements.length &&
    one.statements.every((terms, index) => sameTerms(terms, other.statements[index] ?? []))
  );
}

function samePack(one: Stated['pack'], other: Stated['pack']): boolean {
  if (one === null || other === null) return one === other;
  const [high, otherHigh] = [one.sizeHigh ?? one.size, other.sizeHigh ?? other.size];
  return one.unit === other.unit && one.word === other.word && one.size.equals(other.size) && high.equals(otherHigh);
}

function sameTerms(one: readonly Term[], other: readonly Term[]): boolean {
  return one.length === other.length && one.every((term, index) => sameTerm(term, other[index]));
}

function sameTerm(one: Term, other: Term | undefined): boolean {
  if (other === undefined || one.unit !== other.unit || !one.low.equals(other.low)) return false;
  if ((one.fill ?? null) !== (other.fill ?? null)) return false;
  return one.high === null || other.high === null ? one.high === other.high : one.high.equals(other.high);
}
