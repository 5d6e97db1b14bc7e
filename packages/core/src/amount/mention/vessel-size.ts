import { readUnit } from '../quantity/unit-reading.js';
import { isLengthUnit } from '../size.js';
import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { vesselKinds, vessels } from './mention-words.js';
import { type ReadSize, readSizeAt } from './read-size.js';

/** Whether a size is that of a vessel: its name follows, or the size stands in a bracket behind it. */
export function isNamedBySize(tokens: Tokens, size: ReadSize): boolean {
  const longestName = 7;
  let at = size.next;
  for (let step = 0; step < longestName; step += 1) {
    const { lower } = tokens.at(at);
    if (vessels.has(lower)) return true;
    const partner = tokens.partner[at] ?? -1;
    if (partner > at) at = partner + 1;
    else if (lower === '/') at = readSizeAt(tokens, at + 1)?.next ?? at + 1;
    else if (lower === ')' || lower === '-' || vesselKinds.has(lower)) at += 1;
    else if (readUnit(tokens, at, { afterNumber: true }) !== null && tokens.word(at - 1) === '/') at += 1;
    else break;
  }
  return vesselBefore(tokens, bracketBefore(tokens, size), size.unit);
}

/** Index of the bracket that opens right before a size (and words for about), or -1. */
function bracketBefore(tokens: Tokens, size: ReadSize): number {
  const open = tokens.word(size.first - 1) === '(' ? size.first - 1 : size.first - 2;
  return tokens.word(open) === '(' && (tokens.partner[open] ?? -1) >= size.next ? open : -1;
}

/** Units in which pots are named: a spoonful in a bracket behind a pan is what goes into it. */
const potUnits: ReadonlySet<UnitId> = new Set<UnitId>(['l', 'quart', 'gallon']);

/** Whether the words before a bracket name a vessel: right before a length, a few words before a volume. */
function vesselBefore(tokens: Tokens, open: number, unit: UnitId): boolean {
  const farthest = isLengthUnit(unit) ? 1 : potUnits.has(unit) ? 8 : 0;
  for (let at = open - 1; at >= Math.max(0, open - farthest); at -= 1) {
    if (vessels.has(tokens.word(at))) return true;
    if (tokens.at(at).kind === 'number') return false;
  }
  return false;
}
