// Longer than most files: the steps of reading one line share its draft, and are read in the order in which they run.

import { isMeasured } from '../quantity/statement.js';
import { readUnit } from '../quantity/unit-reading.js';
import type { Doubt, LineReading } from '../reading.js';
import type { KitchenUnits } from '../size.js';
import { isVolumeUnit } from '../size.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { countsPacks, readAdded, readAddedBehind } from './added-amount.js';
import { doubtAbout } from './doubt.js';
import { type FoodPhrase, readFoodPhrase } from './food-phrase.js';
import { readFurther } from './further.js';
import { findLaterAmount } from './later-amount.js';
import { type LineAmount, readLineAmount } from './line-amount.js';
import { LineDraft } from './line-draft.js';
import { isNotAnIngredient } from './line-kind.js';
import { passLead } from './line-lead.js';
import { gestures, notCounted, proportions } from './line-words.js';
import { isOptionalLine, markOptional } from './optional.js';
import { restOf } from './rest.js';
import { readSecondStatements } from './second-statement.js';
import { readSizeWord } from './size-word.js';
import { trailingUnit } from './trailing-unit.js';

/** Reads one line: a state that the steps of `read` fill in order. */
export class LineReader {
  private readonly tokens: Tokens;
  private readonly kitchen: KitchenUnits;
  private readonly draft: LineDraft;
  private food: FoodPhrase | null = null;
  private doubt: Doubt | null = null;
  /** Index behind an amount that was left unread. */
  private doubted = 0;

  constructor(tokens: Tokens, kitchen: KitchenUnits) {
    this.tokens = tokens;
    this.kitchen = kitchen;
    this.draft = new LineDraft(tokens);
  }

  read(): LineReading {
    const { tokens } = this;
    markOptional(tokens, this.draft.use);
    const lead = passLead(tokens, this.draft.use);
    const head = lead.vague ? null : this.readHead(lead.amount);
    if (head === null) this.readFoodFirst(lead.food, lead.list);
    else this.readFoodBehind(head, lead.part);
    return this.reading(lead.from);
  }

  private readonly taken = (index: number): boolean => this.draft.use[index] !== 0;

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
    this.draft.enter(head, list ? head.next : this.passOf(head.next, head));
    if (list) this.draft.take(head.next, each);
    const direct = readSecondStatements(tokens, head, {
      place: 'direct',
      kitchen: this.kitchen,
      foods: noFoods,
      taken: this.taken,
    });
    this.draft.restate(direct);
    const from = this.addMore(direct.at(-1)?.next ?? head.next);
    const spice = head.unit === 'clove' && tokens.at(from).kind === 'mark';
    this.food = spice
      ? null
      : readFoodPhrase(tokens, this.passMeasureWords(from, head), tokens.length, this.taken, list);
    this.foodFromUnit(head);
    this.trailing(head);
    if (this.food === null) return;
    this.widen();
    this.draft.restate(
      readSecondStatements(tokens, head, {
        place: 'behind',
        kitchen: this.kitchen,
        foods: this.foodWords(),
        taken: this.taken,
        from: Math.max(this.food.next, head.next),
        amounts: this.draft.amounts,
        part,
      }),
    );
    this.addBehind(head);
  }

  /** `1 stick (½ cup) plus 2 tbsp butter`: what is added before the food is named. */
  private addMore(at: number): number {
    const context = { place: 'direct' as const, kitchen: this.kitchen, foods: noFoods, taken: this.taken };
    const added = readAdded(this.tokens, at, context);
    if (added === null || this.tokens.at(added.next).kind !== 'word') return at;
    return this.draft.add(added, at, this.kitchen) ? added.next : at;
  }

  /** `1 (14-oz) can coconut milk plus ¼ cup`: so much of the next can. Of a cup and two spoons each stays by itself. */
  private addBehind(head: LineAmount): void {
    if (this.food === null || this.draft.plus !== undefined || !countsPacks({ ...head, pack: this.draft.pack })) return;
    const context = { place: 'direct' as const, kitchen: this.kitchen, foods: this.foodWords(), taken: this.taken };
    const added = readAddedBehind(this.tokens, this.food.next, context);
    if (added !== null) this.draft.add(added, added.start, this.kitchen);
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
    if (this.food !== null || unitWord === null || head.pack !== null || this.draft.amounts[0] === undefined) return;
    const nameable = unitWord.unit === 'clove' || unitWord.loose !== '';
    if (!nameable) return;
    const at = unitWord.next - 1;
    this.draft.use[at] = 0;
    this.food = { tokens: [at], text: this.tokens.at(at).text, next: at + 1 };
    const { first, next } = head.statement.quantity.range ?? { first: at, next: at };
    this.draft.amounts[0] = {
      ...this.draft.amounts[0],
      unit: 'count',
      span: this.tokens.span(first, Math.max(next, first + 1)),
    };
    this.draft.spans = [this.tokens.span(head.start, Math.max(next, first + 1))];
  }

  /** `3 garlic cloves`: the unit follows the food. */
  private trailing(head: LineAmount): void {
    const first = this.draft.amounts[0];
    if (this.food === null || first === undefined || (head.pack !== null && head.pack.word !== '')) return;
    const loose = head.statement.quantity.unitWord?.loose ?? '';
    const found = trailingUnit(this.tokens, this.food, first.unit, loose);
    if (found === null) return;
    this.draft.amounts[0] = { ...first, unit: found.unit };
    if (found.food === null) return;
    this.food = found.food;
    const at = found.at;
    this.draft.use[at] = 1;
    this.draft.addSpan({ start: this.tokens.at(at - 1).end, end: this.tokens.at(at).end });
  }

  /** `1 carrot (or 2)`: a second number in a bracket behind the food makes a range. */
  private widen(): void {
    const { tokens } = this;
    const first = this.draft.amounts[0];
    const open = this.food?.next ?? 0;
    if (first === undefined || first.high !== null || isMeasured(first.unit) || tokens.word(open) !== '(') return;
    const upper = tokens.word(open + 1) === 'or' ? readNumber(tokens, open + 2) : null;
    if (upper === null || upper.article || tokens.word(upper.next) !== ')' || !upper.value.gt(first.low)) return;
    this.draft.amounts[0] = { ...first, high: upper.value };
    this.draft.take(open, upper.next + 1);
    this.draft.addSpan(this.draft.spanWithBlank(open, upper.next + 1));
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
    this.draft.enter(found.amount, found.amount.next);
    if (found.food !== null) this.food = found.food;
    if (found.unit !== null && this.draft.amounts[0] !== undefined)
      this.draft.amounts[0] = { ...this.draft.amounts[0], unit: found.unit };
    const seconds = { kitchen: this.kitchen, foods: this.foodWords(), taken: this.taken };
    const direct = readSecondStatements(tokens, found.amount, { ...seconds, place: 'direct' });
    this.draft.restate(direct);
    const behind = direct.at(-1)?.next ?? found.amount.next;
    const rest = { ...seconds, place: 'behind' as const, from: behind, amounts: this.draft.amounts, part: false };
    this.draft.restate(readSecondStatements(tokens, found.amount, rest));
  }

  /** The `of` behind a unit belongs to the amount, unless mark-up stands between. */
  private passOf(next: number, head: LineAmount): number {
    const { tokens } = this;
    const unit = head.statement.quantity.unitWord !== null || head.pack !== null;
    const fraction = head.statement.quantity.range?.fraction === true;
    const isOf = (unit || fraction) && tokens.word(next) === 'of' && !tokens.at(next).marked;
    return isOf ? next + 1 : next;
  }

  private foodWords(): string[] {
    return (this.food?.tokens ?? []).map((index) => this.tokens.word(index));
  }

  private reading(from: number): LineReading {
    const { tokens, food, draft } = this;
    const indexes = food?.tokens ?? [];
    const hasAmount = this.draft.amounts.length > 0;
    draft.fillUp();
    if (isNotAnIngredient(tokens, from, { hasAmount, food: indexes, container: this.draft.pack?.word ?? '' }))
      return this.nothing();
    for (const index of indexes) if (this.draft.use[index] === 0) this.draft.use[index] = 4;
    const size =
      hasAmount && isCounted(this.draft.amounts[0]?.unit ?? 'g')
        ? readSizeWord(tokens, indexes, (index) => draft.use[index] !== 1 || draft.amounts[0]?.unit === 'count')
        : null;
    const first = indexes[0];
    const last = indexes.at(-1);
    const foodSpan =
      first === undefined || last === undefined ? null : { start: tokens.at(first).start, end: tokens.at(last).end };
    return {
      text: tokens.text,
      kind: hasAmount ? 'amount' : 'no-amount',
      amounts: this.draft.amounts,
      pack: this.draft.pack,
      amountSpans: [...this.draft.spans].sort((one, other) => one.start - other.start),
      ...(this.draft.plus === undefined ? {} : { plus: this.draft.plus }),
      food: food === null || foodSpan === null ? null : { text: food.text, span: foodSpan },
      size,
      prep: restOf(tokens, this.draft.use),
      optional: isOptionalLine(this.draft.use),
      further: readFurther(tokens, (index) => this.draft.use[index] === 1 || this.isDoubted(index)),
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
      further: readFurther(this.tokens, () => false),
      doubt: null,
    };
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
