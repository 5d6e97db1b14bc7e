import type { Tokens } from '../token/token.js';
import type { UnitId } from '../unit.js';
import { isMeasured } from './statement.js';
import { passAdjectives } from './unit-behind-adjectives.js';
import { type ReadUnit, readUnit } from './unit-reading.js';

/** What stands behind a size: a container, `tinned`, a piece, or nothing of that kind. */
export interface Thing {
  unit: UnitId;
  word: string;
  next: number;
  container: boolean;
}

const containerAdjectives = new Map<string, 'can' | 'tin'>([
  ['canned', 'can'],
  ['tinned', 'tin'],
]);

/** Reads what is counted at an index; `null` where neither a container nor a counting word stands. */
export function readThing(tokens: Tokens, index: number): Thing | null {
  const at = tokens.word(index) === '-' ? index + 1 : index;
  const adjective = containerAdjectives.get(tokens.word(at));
  if (adjective !== undefined) return { unit: adjective, word: adjective, next: at + 1, container: true };
  const read = readUnit(tokens, passAdjectives(tokens, at), { afterNumber: false }) ?? readShortContainer(tokens, at);
  if (read === null || isMeasured(read.unit)) return null;
  if (read.container !== '') return { unit: read.unit, word: read.container, next: read.next, container: true };
  return { unit: read.unit, word: pieceWords.get(read.loose) ?? '', next: read.next, container: false };
}

function readShortContainer(tokens: Tokens, index: number): ReadUnit | null {
  const read = readUnit(tokens, index, { afterNumber: true });
  return read !== null && read.container !== '' ? read : null;
}

/** Things in one piece that shops name so. */
const pieceWords: ReadonlyMap<string, string> = new Map([
  ['block', 'block'],
  ['blocks', 'block'],
  ['brick', 'block'],
  ['bricks', 'block'],
  ['bar', 'bar'],
  ['bars', 'bar'],
  ['log', 'log'],
  ['logs', 'log'],
  ['ball', 'ball'],
  ['balls', 'ball'],
  ['loaf', 'loaf'],
  ['loaves', 'loaf'],
  ['ring', 'ring'],
  ['rings', 'ring'],
  ['sheet', 'sheet'],
  ['sheets', 'sheet'],
  ['wedge', 'wedge'],
  ['wedges', 'wedge'],
  ['wheel', 'wheel'],
  ['wheels', 'wheel'],
  ['cube', 'cube'],
  ['cubes', 'cube'],
  ['square', 'square'],
  ['squares', 'square'],
]);
