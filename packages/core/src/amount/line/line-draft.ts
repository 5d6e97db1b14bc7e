import type { LineReading, PackSize, Quantity, Span } from '../reading.js';
import type { KitchenUnits } from '../size.js';
import type { Tokens } from '../token/token.js';
import { type AddedAmount, addUpStatements, countsPacks } from './added-amount.js';
import { fillBehind } from './fill-behind.js';
import type { LineAmount } from './line-amount.js';
import type { SecondStatement } from './restated-clause.js';

/** What has been read of a line so far: amounts, pack, the stretches that state them, and which tokens are used up. */
export class LineDraft {
  private readonly tokens: Tokens;
  /** 0 free, 1 belongs to the amount, 2 says that the line is optional, 3 a sign or lead word, 4 the food. */
  readonly use: Uint8Array;
  amounts: Quantity[] = [];
  pack: PackSize | null = null;
  plus: LineReading['plus'];
  spans: Span[] = [];

  constructor(tokens: Tokens) {
    this.tokens = tokens;
    this.use = new Uint8Array(tokens.length);
  }

  /** Enters the amount of the line; `next` is the index behind the stretch that states it. */
  enter(amount: LineAmount, next: number): void {
    this.amounts.push(this.quantityOf(amount));
    this.pack = this.packOf(amount) ?? this.pack;
    this.take(amount.start, next);
    this.spans.push(this.tokens.span(amount.start, next));
  }

  private quantityOf({ low, high, unit, approx, first, next, pack, statement: { beside } }: LineAmount): Quantity {
    const quantity = { low, high, unit, approx, span: this.tokens.span(first, next) };
    return beside === undefined || pack !== null ? quantity : { ...quantity, beside };
  }

  private packOf({ pack }: LineAmount): PackSize | null {
    if (pack === null) return null;
    const { count, size, sizeHigh, sizeUnit, word } = pack;
    return { count, size, sizeHigh, unit: sizeUnit, word, span: this.tokens.span(pack.first, pack.next) };
  }

  /** Enters further statements of the same amount, and a size of each that stands apart. */
  restate(seconds: readonly SecondStatement[]): void {
    for (const second of seconds) {
      if (second.other) {
        this.take(second.start, second.next);
        this.addSpan(this.spanWithBlank(second.start, second.next));
        continue;
      }
      if (second.each !== undefined && this.amounts[0] !== undefined) {
        // Of two sizes the first is kept.
        if (this.pack !== null) {
          this.take(second.start, second.next);
          this.addSpan(this.spanWithBlank(second.start, second.next));
          continue;
        }
        const { low, high, unit } = second.each;
        this.pack = {
          count: this.amounts[0].low,
          size: low,
          sizeHigh: high,
          unit,
          word: second.word,
          span: this.tokens.span(second.first, second.quantityNext),
        };
      } else {
        const { low, high, unit, approx } = second;
        this.amounts.push({ low, high, unit, approx, span: this.tokens.span(second.first, second.quantityNext) });
      }
      this.take(second.start, second.next);
      this.addSpan(this.spanWithBlank(second.start, second.next));
    }
  }

  /** Enters what is added to the amount, up to an index: added up with it where they measure the same. */
  add({ amount, quantities, next }: AddedAmount, start: number, kitchen: KitchenUnits): boolean {
    const sums = addUpStatements(this.amounts, quantities, kitchen);
    const [first] = this.amounts;
    if (
      first === undefined ||
      (sums.length === 0 && !(countsPacks({ ...first, pack: this.pack }) || countsPacks(amount)))
    )
      return false;
    if (sums.length > 0 && this.pack === null) {
      const approx = first.approx || amount.approx;
      const span = { start: first.span.start, end: this.tokens.at(amount.next - 1).end };
      this.amounts = sums.map((sum) => ({ ...sum, approx, span }));
    } else this.plus = { amount: this.quantityOf(amount), pack: this.packOf(amount) };
    this.take(start, next);
    this.addSpan(this.spanWithBlank(start, next));
    return true;
  }

  /** Enters how full the spoon of the amount is, where that stands apart from it. */
  fillUp(): void {
    const [first, ...others] = this.amounts;
    const found = first === undefined ? null : fillBehind(this.tokens, first, (index) => this.use[index] === 0);
    if (first === undefined || found === null) return;
    this.amounts = [{ ...first, fill: found.fill }, ...others];
    this.take(found.start, found.next);
    const [stretch, ...rest] = this.spans;
    const { start } = this.tokens.span(found.start, found.next);
    // Before the number it makes one stretch with it.
    if (stretch !== undefined && start < stretch.start) this.spans = [{ start, end: stretch.end }, ...rest];
    else this.addSpan(this.spanWithBlank(found.start, found.next));
  }

  /** Joins a stretch to the one before where only blanks lie between. */
  addSpan(span: Span): void {
    const last = this.spans.at(-1);
    const between = last === undefined ? 'x' : this.tokens.text.slice(last.end, Math.max(span.start, last.end));
    if (last !== undefined && between.trim() === '' && span.start <= last.end + between.length) {
      this.spans[this.spans.length - 1] = { start: last.start, end: Math.max(last.end, span.end) };
    } else this.spans.push(span);
  }

  /** Marks tokens as the amount's. */
  take(from: number, next: number): void {
    this.use.fill(1, from, next);
  }

  /** A further statement takes the blank before it along, or, at the start of a bracket that stays, the blank behind it. */
  spanWithBlank(first: number, next: number): Span {
    const { tokens } = this;
    const { start, end } = this.tokens.span(first, next);
    const opens = tokens.word(first - 1) === '(' && next < tokens.length;
    if (opens && tokens.at(next).kind === 'word') return { start, end: tokens.at(next).start };
    const before = first > 0 ? tokens.at(first - 1).end : 0;
    const blank = first > 0 && tokens.text.slice(before, start).trim() === '';
    return { start: blank ? before : start, end };
  }
}
