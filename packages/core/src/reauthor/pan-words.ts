import { panFor } from '../kitchen/pan.js';
import type { DemandContext } from './demands-of.js';
import type { PanChosen } from './pans-of.js';

/** Words of the pans that were chosen, by mention key; none for a pan that plain conversion names as well, in the author's own words. */
export function panWords(
  pans: readonly PanChosen[],
  { native, kitchen }: Pick<DemandContext, 'native' | 'kitchen'>,
): ReadonlyMap<string, string> {
  const texts = pans.flatMap(({ demand, offer, count }) => {
    const { key, text, reading } = demand.mention;
    const converted = panFor(reading, native, kitchen);
    const kept = count === demand.count;
    if (kept && (converted?.text === offer.text || converted?.areaDrift?.isZero() === true)) return [];
    const { start, end } = reading.span;
    const number = kept ? countWords(text.slice(start, end), reading.count !== null) : `${count} × `;
    const size = reading.depth === null ? offer.text : withRim(offer);
    return [[key, text.slice(0, start) + number + size + text.slice(end)] as const];
  });
  return new Map(texts);
}

/** The words for how many, as written: `two `, `2 × `, `two (`. */
function countWords(words: string, isCounted: boolean): string {
  return isCounted ? (/^(?:\p{L}+|\d+)\s+(?:[x×]\s+)?\(?/u.exec(words)?.[0] ?? '') : '';
}

/** Where the author states the rim, that of the pan is stated. */
function withRim({ text, pan: { depth, unit } }: PanChosen['offer']): string {
  const at = text.lastIndexOf(' ');
  return depth === null || text.slice(at + 1) !== unit ? text : `${text.slice(0, at)} × ${depth}${text.slice(at)}`;
}
