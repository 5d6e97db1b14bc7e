import { Exact, type Setting, type Version, versionFor } from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import type { RecipeReading } from './read/reading.js';

/** What versions are worked out from and re-authored by, for a site. */
export function settingOf(larder: Larder, settings: Settings): Setting {
  const { foods, kitchens } = larder;
  return { foods, kitchens, tolerance: new Exact(settings.tolerance), weights: settings.reauthoring };
}

/** The versions of a recipe for every kitchen served, the native one first whether it is served or not. */
export function versionsOf(reading: RecipeReading, larder: Larder, settings: Settings): Version[] {
  const native = reading.recipe.kitchen;
  const kitchens = [native, ...settings.kitchens.filter((id) => id !== native && larder.kitchens.has(id))];
  return kitchens.map((id) => versionFor(reading.recipe, id, settingOf(larder, settings)));
}
