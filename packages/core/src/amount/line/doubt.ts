import type { ReadPack } from '../quantity/pack-reading.js';
import { readQuantity } from '../quantity/quantity.js';
import { isMeasured } from '../quantity/statement.js';
import { readUnit } from '../quantity/unit-reading.js';
import type { Doubt } from '../reading.js';
import type { Tokens } from '../token/token.js';
import type { LineAmount } from './line-amount.js';

/** Abbreviations that are no units, although they have no vowel. */
const knownShort = new Set([
  'bbq',
  'xl',
  'xxl',
  'lg',
  'lrg',
  'sm',
  'md',
  'med',
  'x',
  'w',
  'dry',
  'rye',
  'fry',
  'by',
  'my',
  'pb',
  'blt',
  'tvp',
  'msg',
  'mct',
  'nf',
  'gf',
]);

/**
 * Why what stands at an index is no sure amount, although it looks like one.
 *
 * @param amount What was read there, or `null`.
 */
export function doubtAbout(tokens: Tokens, index: number, amount: LineAmount | null): Doubt | null {
  if (amount === null) return unreadNumber(tokens, index);
  const { quantity } = amount.statement;
  const range = quantity.range;
  const doubt = (because: string, instead: string, next = amount.next): Doubt =>
    makeDoubt(tokens, amount.first, next, because, instead);
  if (range?.reversed) return doubt('The second number is not above the first.', 'Write the smaller number first.');
  if (amount.pack !== null && isSpoonOf(tokens, amount, amount.pack))
    return doubt('Two numbers stand before one unit.', 'Write one number.');
  const reversed = reversedRange(tokens, amount);
  if (reversed !== null)
    return doubt('The second amount is not above the first.', 'Write the smaller amount first.', reversed);
  if (amount.pack?.unsure) {
    return doubt(
      'This may be one pack of that size, or several smaller ones.',
      'Put the size in brackets: `1 (15-oz) can`.',
    );
  }
  const triple = tokens.at(amount.first).triple;
  const small = amount.statement.unit === 'g' || amount.statement.unit === 'ml' || amount.statement.unit === 'mg';
  const odd = triple === 'point' ? small : triple === 'comma' && !small && amount.statement.unit !== 'count';
  if (odd)
    return doubt('This may be thousands or a decimal.', 'Write thousands without a sign, and decimals with a point.');
  const less = tokens.word(amount.next);
  if ((less === 'minus' || less === 'less') && tokens.at(amount.next + 1).kind === 'number')
    return doubt('An amount is taken off another here.', 'Write what is left as one amount.', amount.next + 2);
  if (quantity.unitWord !== null || amount.pack !== null) return null;
  if (range?.neighbours === true && tokens.word(amount.next - 1) !== 'a' && isPlural(tokens, amount.next)) {
    return doubt('This may be a fraction or two numbers to choose from.', 'Write a range with a dash: `2-3`.');
  }
  const behind = tokens.word(amount.next);
  if (!quantity.article && looksLikeUnit(behind)) {
    return doubt(
      `\`${tokens.at(amount.next).text}\` is no unit that is known here.`,
      'Spell the unit out.',
      amount.next + 1,
    );
  }
  return null;
}

/** `1 1 cup flour`: no pack is so many spoons or cups. */
function isSpoonOf(tokens: Tokens, { first }: LineAmount, { word, unit, sizeUnit }: ReadPack): boolean {
  const isSpoon = sizeUnit === 'cup' || sizeUnit === 'tbsp' || sizeUnit === 'tsp';
  return isSpoon && word === '' && unit === 'count' && tokens.at(first + 1).kind === 'number';
}

/** Index behind `1 cup to 2 tbsp`, whose ends are the wrong way round; null where no amount follows. */
function reversedRange(tokens: Tokens, { next, statement }: LineAmount): number | null {
  if (tokens.word(next) !== 'to' || !isMeasured(statement.unit) || statement.high !== null) return null;
  const upper = readQuantity(tokens, next + 1);
  return upper === null || upper.bare || upper.article || !isMeasured(upper.unit) ? null : upper.next;
}

function makeDoubt(tokens: Tokens, first: number, next: number, because: string, instead: string): Doubt {
  const span = tokens.span(first, next);
  return { text: tokens.text.slice(span.start, span.end), span, because, instead };
}

/** Digits that are no number (`3/2 cups`, `1.2.3 g`) with a unit behind. */
function unreadNumber(tokens: Tokens, index: number): Doubt | null {
  const token = tokens.at(index);
  if (token.kind !== 'word' || !/^\p{Nd}/u.test(token.text)) return null;
  const unit = readUnit(tokens, index + 1, { afterNumber: true });
  if (unit === null) return null;
  return makeDoubt(
    tokens,
    index,
    unit.next,
    'This number may be read in more than one way.',
    'Write it as `1 1/2` or `1.5`.',
  );
}

/** `5/6 Bayleaf` is plural only in sense: a name with two words or an s is asked about, `2/3 pineapple` is not. */
function isPlural(tokens: Tokens, index: number): boolean {
  const [word, behind] = [tokens.at(index), tokens.at(index + 1)];
  const value = tokens.at(index - 1).text;
  const likelyFraction = value === '2/3' || value === '3/4';
  if (!likelyFraction) return true;
  return [word, behind].some(({ kind, lower }) => kind === 'word' && lower.endsWith('s') && !lower.endsWith('ss'));
}

function looksLikeUnit(word: string): boolean {
  return word.length > 1 && word.length < 6 && /^[b-df-hj-np-tv-z]+$/u.test(word) && !knownShort.has(word);
}
