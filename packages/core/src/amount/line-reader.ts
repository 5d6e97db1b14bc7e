import { shortSizes, sizeWords } from './adjective-words.js';
import { doubtAbout } from './doubt.js';
import { type FoodPhrase, readFoodPhrase } from './food-phrase.js';
import { readFurther } from './further.js';
import { findLaterAmount } from './later-amount.js';
import { type LineAmount, readLineAmount } from './line-amount.js';
import { isNotAnIngredient } from './line-kind.js';
import { passLead } from './line-lead.js';
import { gestures, notCounted, proportions } from './line-words.js';
import { readNumber } from './number.js';
import { isOptionalLine, markOptional } from './optional.js';
import type { Doubt, LineReading, PackSize, Quantity, Span } from './reading.js';
import { restOf } from './rest.js';
import { readSecondStatements } from './second-statement.js';
import type { KitchenUnits } from './size.js';
import { isVolumeUnit } from './size.js';
import { isMeasured } from './statement.js';
import type { Tokens } from './token.js';
import { trailingUnit } from './trailing-unit.js';
import type { UnitId } from './unit.js';
import { readUnit } from './unit-reading.js';

/** Reads one line: a state that the steps of `read` fill in order. */
export class LineReader {
  private readonly tokens: Tokens;
  private readonly kitchen: KitchenUnits;
  /** 1 where a token belongs to the amount, 2 where it says that the line is optional, 3 where it is a sign or lead word. */
  private readonly use: Uint8Array;
  private amounts: Quantity[] = [];
  private pack: PackSize | null = null;
  private spans: Span[] = [];
  private food: FoodPhrase | null = null;
  private doubt: Doubt | null = null;
  /** Index behind an amount that was left unread. */
  private doubted = 0;

  constructor(tokens: Tokens, kitchen: KitchenUnits) {
    this.tokens = tokens;
    this.kitchen = kitchen;
    this.use = new Uint8Array(tokens.length);
  }

  read(): LineReading {
    const { tokens } = this;
    markOptional(tokens, this.use);
    const lead = passLead(tokens, this.use);
    const head = lead.vague ? null : this.readHead(lead.amount);
    if (head === null) this.readFoodFirst(lead.food, lead.list);
    else this.readFoodBehind(head, lead.part);
    return this.reading(lead.from);
  }

  private readonly taken = (index: number): boolean => this.use[index] !== 0;

  /** An amount at the head of the line, unless what stands there is a gesture, a proportion, a time. */
  private readHead(from: number): LineAmount | null {
    const amount = readLineAmount(this.tokens, from, this.kitchen);
    this.doubt = doubtAbout(this.tokens, from, amount);
    if (this.doubt !== null) this.doubted = amount?.next ?? from + 1;
    if (this.doubt !== null || amount === null) return null;
    const behind = this.tokens.word(amount.next);
    const unitless = amount.statement.quantity.unitWord === null && amount.pack === null;
    if (unitless && (notCounted.has(behind) || proportions.has(behind) || gestures.has(behind))) return null;
    if (unitless && isSides(this.tokens, amount.next)) {
      this.doubted = amount.next + 2;
      return null;
    }
    if (unitless && amount.statement.quantity.article && this.tokens.at(amount.next).kind !== 'word') return null;
    return amount;
  }

  private readFoodBehind(head: LineAmount, part: boolean): void {
    const { tokens } = this;
    const each = tokens.word(head.next) === 'each' ? head.next + 1 : head.next;
    const list = each > head.next;
    this.enter(head, list ? each : this.passOf(head.next, head));
    const direct = readSecondStatements(tokens, head, {
      place: 'direct',
      kitchen: this.kitchen,
      foods: noFoods,
      taken: this.taken,
    });
    this.enterSeconds(direct);
    const from = direct.at(-1)?.next ?? head.next;
    const spice = head.unit === 'clove' && tokens.at(from).kind === 'mark';
    this.food = spice
      ? null
      : readFoodPhrase(tokens, this.passMeasureWords(from, head), tokens.length, this.taken, list);
    this.foodFromUnit(head);
    this.trailing(head);
    if (this.food === null) return;
    this.widen();
    this.enterSeconds(
      readSecondStatements(tokens, head, {
        place: 'behind',
        kitchen: this.kitchen,
        foods: this.foodWords(),
        taken: this.taken,
        from: Math.max(this.food.next, head.next),
        amounts: this.amounts,
        part,
      }),
    );
  }

  /** `1 jar or can of tomatoes`, `2-inch piece of ginger`: other words for what is measured, which are no food. */
  private passMeasureWords(index: number, head: LineAmount): number {
    const { tokens } = this;
    const sign = tokens.word(index);
    if (sign === 'or' || sign === '/') {
      const other = readUnit(tokens, index + 1, { afterNumber: false });
      return other !== null && (sign === '/' || !isMeasured(other.unit)) ? other.next : index;
    }
    if (head.pack !== null || !isMeasured(head.unit) || isVolumeUnit(head.unit)) return index;
    const piece = readUnit(tokens, index, { afterNumber: false });
    const isPiece = piece !== null && (piece.unit === 'piece' || piece.loose !== '');
    const next = isPiece ? piece.next : gestures.has(sign) ? index + 1 : index;
    return tokens.at(next).kind === 'word' ? next : index;
  }

  /** `2 Cloves`, `1 clove (spice)`: with no food behind it, the unit word is the food. */
  private foodFromUnit(head: LineAmount): void {
    const { unitWord } = head.statement.quantity;
    if (this.food !== null || unitWord === null || head.pack !== null || this.amounts[0] === undefined) return;
    const nameable = unitWord.unit === 'clove' || unitWord.loose !== '';
    if (!nameable) return;
    const at = unitWord.next - 1;
    this.use[at] = 0;
    this.food = { tokens: [at], text: this.tokens.at(at).text, next: at + 1 };
    const { first, next } = head.statement.quantity.range ?? { first: at, next: at };
    this.amounts[0] = { ...this.amounts[0], unit: 'count', span: this.span(first, Math.max(next, first + 1)) };
    this.spans = [this.span(head.start, Math.max(next, first + 1))];
  }

  /** `3 garlic cloves`: the unit follows the food. */
  private trailing(head: LineAmount): void {
    const first = this.amounts[0];
    if (this.food === null || first === undefined || (head.pack !== null && head.pack.word !== '')) return;
    const loose = head.statement.quantity.unitWord?.loose ?? '';
    const found = trailingUnit(this.tokens, this.food, first.unit, loose);
    if (found === null) return;
    this.amounts[0] = { ...first, unit: found.unit };
    if (found.food === null) return;
    this.food = found.food;
    const at = found.at;
    this.use[at] = 1;
    this.spans.push({ start: this.tokens.at(at - 1).end, end: this.tokens.at(at).end });
  }

  /** `1 carrot (or 2)`: a second number in a bracket behind the food makes a range. */
  private widen(): void {
    const { tokens } = this;
    const first = this.amounts[0];
    const open = this.food?.next ?? 0;
    if (first === undefined || first.high !== null || isMeasured(first.unit) || tokens.word(open) !== '(') return;
    const upper = tokens.word(open + 1) === 'or' ? readNumber(tokens, open + 2) : null;
    if (upper === null || upper.article || tokens.word(upper.next) !== ')' || !upper.value.gt(first.low)) return;
    this.amounts[0] = { ...first, high: upper.value };
    this.take(open, upper.next + 1);
    this.addSpan(this.spanWithBlank(open, upper.next + 1));
  }

  private readFoodFirst(from: number, list: boolean): void {
    const { tokens } = this;
    this.food = readFoodPhrase(tokens, Math.max(from, this.doubted), tokens.length, this.taken, list);
    if (this.doubt !== null) return;
    const found = findLaterAmount(tokens, this.food, {
      kitchen: this.kitchen,
      taken: this.taken,
      from,
      foods: this.foodWords(),
    });
    if (found === null) return;
    if ('because' in found) {
      this.doubt = found;
      return;
    }
    this.enter(found.amount, found.amount.next);
    if (found.food !== null) this.food = found.food;
    if (found.unit !== null && this.amounts[0] !== undefined)
      this.amounts[0] = { ...this.amounts[0], unit: found.unit };
    const seconds = { kitchen: this.kitchen, foods: this.foodWords(), taken: this.taken };
    const direct = readSecondStatements(tokens, found.amount, { ...seconds, place: 'direct' });
    this.enterSeconds(direct);
    const behind = direct.at(-1)?.next ?? found.amount.next;
    const rest = { ...seconds, place: 'behind' as const, from: behind, amounts: this.amounts, part: false };
    this.enterSeconds(readSecondStatements(tokens, found.amount, rest));
  }

  /** The `of` behind a unit belongs to the amount, unless mark-up stands between. */
  private passOf(next: number, head: LineAmount): number {
    const { tokens } = this;
    const unit = head.statement.quantity.unitWord !== null || head.pack !== null;
    const fraction = head.statement.quantity.range?.fraction === true;
    const isOf = (unit || fraction) && tokens.word(next) === 'of' && !tokens.at(next).marked;
    return isOf ? next + 1 : next;
  }

  private enter(amount: LineAmount, next: number): void {
    const { low, high, unit, approx, pack } = amount;
    this.amounts.push({ low, high, unit, approx, span: this.span(amount.first, amount.next) });
    if (pack !== null) {
      const { count, size, sizeHigh, sizeUnit, word } = pack;
      this.pack = { count, size, sizeHigh, unit: sizeUnit, word, span: this.span(pack.first, pack.next) };
    }
    this.take(amount.start, next);
    this.spans.push(this.span(amount.start, next));
  }

  private enterSeconds(seconds: ReturnType<typeof readSecondStatements>): void {
    for (const second of seconds) {
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
          span: this.span(second.first, second.quantityNext),
        };
      } else {
        const { low, high, unit, approx } = second;
        this.amounts.push({ low, high, unit, approx, span: this.span(second.first, second.quantityNext) });
      }
      this.take(second.start, second.next);
      this.addSpan(this.spanWithBlank(second.start, second.next));
    }
  }

  /** Joins a stretch to the one before where only blanks lie between. */
  private addSpan(span: Span): void {
    const last = this.spans.at(-1);
    const between = last === undefined ? 'x' : this.tokens.text.slice(last.end, Math.max(span.start, last.end));
    if (last !== undefined && between.trim() === '' && span.start <= last.end + between.length) {
      this.spans[this.spans.length - 1] = { start: last.start, end: Math.max(last.end, span.end) };
    } else this.spans.push(span);
  }

  private take(from: number, next: number): void {
    this.use.fill(1, from, next);
  }

  private span(first: number, next: number): Span {
    return { start: this.tokens.at(first).start, end: this.tokens.at(Math.max(first, next - 1)).end };
  }

  /** A further statement takes the blank before it along, or, at the start of a bracket that stays, the blank behind it. */
  private spanWithBlank(first: number, next: number): Span {
    const { tokens } = this;
    const { start, end } = this.span(first, next);
    const opens = tokens.word(first - 1) === '(' && next < tokens.length;
    if (opens && tokens.at(next).kind === 'word') return { start, end: tokens.at(next).start };
    const before = first > 0 ? tokens.at(first - 1).end : 0;
    const blank = first > 0 && tokens.text.slice(before, start).trim() === '';
    return { start: blank ? before : start, end };
  }

  private foodWords(): string[] {
    return (this.food?.tokens ?? []).map((index) => this.tokens.word(index));
  }

  private reading(from: number): LineReading {
    const { tokens, food } = this;
    const indexes = food?.tokens ?? [];
    const hasAmount = this.amounts.length > 0;
    if (isNotAnIngredient(tokens, from, { hasAmount, food: indexes, container: this.pack?.word ?? '' }))
      return this.nothing();
    for (const index of indexes) if (this.use[index] === 0) this.use[index] = 4;
    const size = hasAmount && isCounted(this.amounts[0]?.unit ?? 'g') ? this.findSize(indexes) : null;
    const first = indexes[0];
    const last = indexes.at(-1);
    const foodSpan =
      first === undefined || last === undefined ? null : { start: tokens.at(first).start, end: tokens.at(last).end };
    return {
      text: tokens.text,
      kind: hasAmount ? 'amount' : 'no-amount',
      amounts: this.amounts,
      pack: this.pack,
      amountSpans: [...this.spans].sort((one, other) => one.start - other.start),
      food: food === null || foodSpan === null ? null : { text: food.text, span: foodSpan },
      size,
      prep: restOf(tokens, this.use),
      optional: isOptionalLine(this.use),
      further: readFurther(tokens, (index) => this.use[index] === 1 || this.isDoubted(index)),
      doubt: this.doubt,
    };
  }

  private isDoubted(index: number): boolean {
    const { start, end } = this.doubt?.span ?? { start: 0, end: 0 };
    return this.tokens.at(index).start >= start && this.tokens.at(index).start < end;
  }

  private nothing(): LineReading {
    return {
      text: this.tokens.text,
      kind: 'not-an-ingredient',
      amounts: [],
      pack: null,
      amountSpans: [],
      food: null,
      size: null,
      prep: '',
      optional: false,
      further: [],
      doubt: null,
    };
  }

  /** `large` before or behind the food. */
  private findSize(indexes: readonly number[]): LineReading['size'] {
    const first = indexes[0] ?? 0;
    const last = indexes.at(-1) ?? 0;
    for (let at = Math.max(0, first - 6); at < Math.min(this.tokens.length, last + 5); at += 1) {
      const { lower } = this.tokens.at(at);
      const short = Object.hasOwn(shortSizes, lower) ? shortSizes[lower] : undefined;
      if (short !== undefined && this.use[at] === 0) return { text: short, span: this.span(at, at + 1) };
      if (!sizeWords.has(lower) || (this.use[at] === 1 && this.amounts[0]?.unit !== 'count')) continue;
      const extra = lower === 'large' && (this.tokens.word(at - 1) === 'extra' || this.tokens.word(at - 2) === 'extra');
      const start = extra ? (this.tokens.word(at - 1) === 'extra' ? at - 1 : at - 2) : at;
      return { text: extra ? 'extra large' : lower, span: this.span(start, at + 1) };
    }
    return null;
  }
}

/** `9x13 baking dish`: a pan's sides are no count. */
function isSides(tokens: Tokens, at: number): boolean {
  const sign = tokens.word(at);
  return (sign === 'x' || sign === '×') && tokens.at(at + 1).kind === 'number';
}

const noFoods: readonly string[] = [];

function isCounted(unit: UnitId): boolean {
  return unit === 'count' || unit === 'clove' || unit === 'head' || unit === 'stick';
}
