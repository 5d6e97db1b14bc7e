import type { Exact, Pack } from '@retare/core';
import { readExact } from './exact-number.js';
import { massUnits, volumeUnits } from './words.js';

/** The units that a label may state. */
export const labelUnits: readonly string[] = [...massUnits, ...volumeUnits, 'count'];

/** Reads a size as a label has it, `400 g`; null if it is none. */
export function readLabelSize(text: string): { size: Exact; unit: Pack['unit'] } | null {
  const [number = '', unit = '', ...rest] = text.split(' ');
  const size = readExact(number);
  if (size === null || size.lte(0) || rest.length > 0 || !labelUnits.includes(unit)) return null;
  // Sound: `labelUnits` holds these words and no other.
  return { size, unit: unit as Pack['unit'] };
}
