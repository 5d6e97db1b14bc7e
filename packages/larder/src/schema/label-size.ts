import type { Exact, Pack } from '@retare/core';
import { z } from 'zod';
import { readExact } from './exact-number.js';
import { massUnits, volumeUnits } from './words.js';

const labelUnits: readonly string[] = [...massUnits, ...volumeUnits, 'count'];
const takes = 'takes a number and a unit, such as `400 g`, `15 oz`, `1 l` or `12 count`';

/** Reads a size as a label has it, `400 g`; null if it is none. */
export function readLabelSize(text: string): { size: Exact; unit: Pack['unit'] } | null {
  const [number = '', unit = '', ...rest] = text.split(' ');
  const size = readExact(number);
  if (size === null || size.lte(0) || rest.length > 0 || !labelUnits.includes(unit)) return null;
  // Sound: `labelUnits` holds these words and no other.
  return { size, unit: unit as Pack['unit'] };
}

/** A size as a label has it: `400 g`. */
export const labelSize = z.string({ error: takes }).refine((text) => readLabelSize(text) !== null, { error: takes });
