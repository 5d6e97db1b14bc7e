import type { Food, Kitchen } from '@retare/core';

/** Foods and kitchens by id, with a digest that changes whenever their data does. */
export interface Larder {
  foods: ReadonlyMap<string, Food>;
  kitchens: ReadonlyMap<string, Kitchen>;
  /** SHA-256 of the data, in hexadecimal: for caches and stamps. */
  digest: string;
}
