import { Decimal } from 'decimal.js';

/**
 * The project's decimal number. decimal.js keeps its settings on the constructor, so a clone keeps ours to ourselves.
 * Forty digits hold every exact unit factor and any product of two of them.
 */
export const Exact = Decimal.clone({ precision: 40 });

/** An exact decimal number: every amount that is shown is one. */
export type Exact = Decimal;
