import { Exact } from '../../exact.js';

/** Packs within this of each other, or of a need, count as equal, as a fraction. Common practice, no source. */
export const equalPacks = new Exact('0.03');
