import { Exact, type Kitchen, type Setting } from '@retare/core';
import { builtInLarder } from '@retare/larder';

const { foods, kitchens } = builtInLarder();

/** The built-in larder as a setting, with the tolerance of the settings file's default. */
export const setting: Setting = { foods, kitchens, tolerance: new Exact('0.05') };

/** Kitchen ids in the order of the chooser. */
export const kitchenIds = [...kitchens.keys()];

/** A built-in kitchen. */
export function kitchen(id: string): Kitchen {
  const found = kitchens.get(id);
  if (found === undefined) throw new RangeError(`There is no built-in kitchen ${id}.`);
  return found;
}
