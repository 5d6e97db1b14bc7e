import type { Tokens } from '../token/token.js';
import { optionalPhrases } from './line-words.js';

const optionalWords = new Set(['optional', 'optionnal', 'optinal', 'opt']);

/** Marks the words that say that an ingredient may be left out, with brackets that hold nothing else, by a 2. */
export function markOptional(tokens: Tokens, use: Uint8Array): void {
  for (let at = 0; at < tokens.length; at += 1) {
    const length = phraseAt(tokens, at);
    if (length === 0) continue;
    use.fill(2, at, at + length);
    const alone = at > 0 && tokens.partner[at - 1] === at + length;
    if (alone) use.fill(2, at - 1, at + length + 1);
  }
}

function phraseAt(tokens: Tokens, at: number): number {
  const word = tokens.word(at);
  // `optionally roasted` is said of the roasting.
  if (word === 'optionally') return at === 0 || tokens.at(at + 1).kind === 'mark' ? 1 : 0;
  if (optionalWords.has(word)) return word === 'opt' && tokens.word(at - 1) !== '(' ? 0 : isDenied(tokens, at) ? 0 : 1;
  if (word !== 'if') return 0;
  const phrase = optionalPhrases.find((words) => words.every((part, offset) => tokens.word(at + offset) === part));
  if (phrase === undefined || isDenied(tokens, at)) return 0;
  // `if you like it hot` is a condition on something else.
  const behind = tokens.at(at + phrase.length);
  return behind.kind === 'mark' || behind.lower === 'and' ? phrase.length : 0;
}

/** `not optional`, `more if desired` */
function isDenied(tokens: Tokens, at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 3); before -= 1) {
    const word = tokens.word(before);
    if (word === 'not' || word === 'more' || word === 'extra' || word === 'or') return true;
    if (tokens.at(before).kind === 'mark') return false;
  }
  return false;
}

/** Whether any word was marked. */
export function isOptionalLine(use: Uint8Array): boolean {
  return use.includes(2);
}
