import { z } from 'zod';
import { labelUnits, readLabelSize } from './label-size.js';

const takes = 'takes a number and a unit, such as `400 g`, `15 oz`, `1 l` or `12 count`';

/** A size as a label has it: `400 g`. */
export const labelSize = z
  .string({ error: takes })
  .refine((text) => readLabelSize(text) !== null, { error: takes })
  .meta({ description: takes, pattern: `^\\d+(\\.\\d+)?(/\\d+)? (${labelUnits.join('|')})$` });
