import type { PanReading } from '../reading.js';
import type { Tokens } from '../token/token.js';

const shapes: ReadonlyMap<string, PanReading['shape']> = new Map([
  ['round', 'round'],
  ['rounds', 'round'],
  ['circular', 'round'],
  ['springform', 'round'],
  ['pie', 'pie'],
  ['tart', 'pie'],
  ['skillet', 'stove'],
  ['frying', 'stove'],
  ['pizza', 'stove'],
  ['wok', 'stove'],
  ['griddle', 'stove'],
  ['sauté', 'stove'],
  ['saute', 'stove'],
  ['paella', 'stove'],
  ['sheet', 'sheet'],
  ['sheets', 'sheet'],
  ['tray', 'sheet'],
  ['trays', 'sheet'],
  ['flan', 'pie'],
  ['square', 'square'],
  ['squares', 'square'],
  ['rectangle', 'rectangle'],
  ['rectangular', 'rectangle'],
  ['oblong', 'rectangle'],
  ['quiche', 'pie'],
  ['loaf', 'loaf'],
  ['bundt', 'tube'],
  ['tube', 'tube'],
  ['ring', 'tube'],
]);

/** The shape that a pan's words say; undefined where they say none. */
export function shapeWord(tokens: Tokens): PanReading['shape'] | undefined {
  for (const token of tokens.list) {
    const shape = shapes.get(token.lower);
    if (shape !== undefined) return shape;
  }
  return undefined;
}
