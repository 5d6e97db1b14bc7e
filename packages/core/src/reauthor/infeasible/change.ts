import type { Stated } from '../../amount/stated.js';
import type { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import type { Line } from '../../recipe/recipe.js';
import type { RatioLimits } from '../weights.js';

/** Something that an author can do so that there is a version. */
export type Change =
  | {
      kind: 'native-amount';
      line: Line;
      /** The amount to write in its place, in the native kitchen. */
      to: Stated;
      text: string;
    }
  | {
      kind: 'anchor';
      /** The food to name as the anchor, as its line calls it; null: name none. */
      anchor: string | null;
      batchFactor: number;
    }
  | {
      kind: 'limit';
      /** The setting, under `reauthoring.limits`, and the ratio that asks for it. */
      key: keyof RatioLimits;
      name: string;
      part: string | null;
      from: number;
      limit: number;
    }
  | { kind: 'half-pack'; line: Line; food: Food }
  | { kind: 'pack-size'; line: Line; food: Food; size: Exact; unit: 'g' | 'oz' }
  /** Allergens that the other food adds. */
  | { kind: 'food'; line: Line; food: Food; instead: Food; allergens: string[] }
  | {
      kind: 'weight';
      line: Line;
      food: Food;
      /** A weight with which there is a version: what the line weighs the author has to find out. */
      grams: Exact;
    }
  | { kind: 'own-version'; line: Line; food: Food | null };
