import { Exact, type Setting, type Version, versionFor } from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import type { RecipeReading } from './read/reading.js';

/** What versions are worked out from, for a site. */
function settingOf(larder: Larder, settings: Settings): Setting {
  return { foods: larder.foods, kitchens: larder.kitchens, tolerance: new Exact(settings.tolerance) };
}

/** The versions of a recipe for every kitchen served, the native one first whether it is served or not. */
export function versionsOf(reading: RecipeReading, larder: Larder, settings: Settings): Version[] {
  const native = reading.recipe.kitchen;
  const kitchens = [native, ...settings.kitchens.filter((id) => id !== native && larder.kitchens.has(id))];
  return kitchens.map((id) => versionFor(reading.recipe, id, settingOf(larder, settings)));
}
