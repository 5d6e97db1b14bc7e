import type { Exact } from '../../exact.js';
import type { Span } from '../reading.js';

/** How a number was written: `2`, `2.5`, `½` or `1/2`, `1 ½`; `word` for `half` and `two`. */
export type NumberForm = 'whole' | 'decimal' | 'fraction' | 'mixed' | 'word';

/** A word, a number or a single sign of the text that is read. */
export interface Token {
  kind: 'number' | 'word' | 'mark';
  /** As written. */
  text: string;
  /** Lower case, compatibility forms folded, straight apostrophes. */
  lower: string;
  /** UTF-16 offsets in the whole text, `end` exclusive. */
  start: number;
  end: number;
  /** A blank, or the start of the text, stands before it. */
  gap: boolean;
  /** Mark-up (emphasis, a link's brackets) stands between this token and the one before. */
  marked: boolean;
  /** Value of a number token, `null` of any other. */
  value: Exact | null;
  form: NumberForm | null;
  /** Comma or point with three digits behind (`1,500`, `1.500`): a thousand to some writers, a decimal to others. */
  triple: 'comma' | 'point' | null;
}

/** A token list read by index: past the end there is always an empty mark, so that no grammar has to look out for it. */
export class Tokens {
  readonly list: readonly Token[];
  readonly text: string;
  /** For a bracket, the index of its partner; otherwise -1. */
  readonly partner: Int32Array;

  constructor(text: string, list: readonly Token[]) {
    this.text = text;
    this.list = list;
    this.partner = partners(list);
  }

  get length(): number {
    return this.list.length;
  }

  /** The same without the tokens from one index up to another, as if they had never been written. */
  without(first: number, next: number): Tokens {
    return new Tokens(this.text, [...this.list.slice(0, first), ...this.list.slice(next)]);
  }

  /** The token at an index; an empty mark outside the list. */
  at(index: number): Token {
    return this.list[index] ?? nothing;
  }

  /** Lower-case text at an index, empty outside the list. */
  word(index: number): string {
    return this.at(index).lower;
  }

  /** The stretch of the text from one token up to another. */
  span(first: number, next: number): Span {
    return { start: this.at(first).start, end: this.at(Math.max(first, next - 1)).end };
  }
}

const nothing: Token = {
  kind: 'mark',
  text: '',
  lower: '',
  start: 0,
  end: 0,
  gap: true,
  marked: false,
  value: null,
  form: null,
  triple: null,
};

const closing: Readonly<Record<string, string>> = { ')': '(', ']': '[', '}': '{' };

function partners(list: readonly Token[]): Int32Array {
  const partner = new Int32Array(list.length).fill(-1);
  const open: number[] = [];
  list.forEach((token, index) => {
    if (token.kind !== 'mark') return;
    if (token.lower === '(' || token.lower === '[' || token.lower === '{') open.push(index);
    const opener = closing[token.lower];
    if (opener === undefined) return;
    const last = open.at(-1);
    if (last === undefined || list[last]?.lower !== opener) return;
    open.pop();
    partner[last] = index;
    partner[index] = last;
  });
  return partner;
}
