import type { Tokens } from '../token/token.js';
import { angleWords, heatWords, meats, reachingWords, turningWords } from './mention-words.js';

/** Remembers, while a line is passed once, which words about heat were last seen. */
export class HeatWatch {
  private readonly tokens: Tokens;
  private last: 'oven' | 'core' | 'temp' | null = null;
  private turned = -1;

  constructor(tokens: Tokens) {
    this.tokens = tokens;
  }

  pass(at: number): void {
    const word = this.tokens.word(at);
    if (turningWords.has(word)) this.turned = at;
    if (reachingWords.has(word) && this.meatBefore(at)) this.last = 'core';
    const kind = heatWords.get(word);
    // `room temperature` is no temperature, and `heat the oven` behind `oil` is the oven's.
    if (kind !== undefined && !(word === 'room' && this.tokens.word(at + 1) === 'temperature')) this.last = kind;
  }

  /** `until the chicken reaches` is said of its inside. */
  private meatBefore(at: number): boolean {
    const near = 4;
    for (let before = at - 1; before >= Math.max(0, at - near); before -= 1)
      if (meats.has(this.tokens.word(before))) return true;
    return false;
  }

  /** Whose temperature stands before index `next`. */
  kindAt(next: number, celsius: number): 'oven' | 'core' | 'temp' {
    const behind = this.wordBehind(next);
    if (behind === 'oven' || behind === 'ovens') return 'oven';
    const coldestOven = 60;
    const hottestCore = 105;
    if (this.last === 'oven' && celsius >= coldestOven) return 'oven';
    if (this.last === 'core' && celsius <= hottestCore) return 'core';
    if (this.last === 'temp') return 'temp';
    const hottestOther = 110;
    return this.last === null || this.last === 'core' ? (celsius >= hottestOther ? 'oven' : 'temp') : 'temp';
  }

  /** The word behind degrees, a bracket with the other scale passed over. */
  private wordBehind(next: number): string {
    const { tokens } = this;
    const bracket = tokens.word(next) === '(' ? (tokens.partner[next] ?? -1) : -1;
    const at = bracket > next ? bracket + 1 : next;
    return tokens.word(at) === ')' ? tokens.word(at + 1) : tokens.word(at);
  }

  /** `rotate 180 degrees`, `a 90-degree twist` */
  isAngle(first: number, next: number): boolean {
    const near = 8;
    return (
      angleWords.has(this.tokens.word(next)) || (this.turned >= 0 && first - this.turned < near && this.last === null)
    );
  }
}
