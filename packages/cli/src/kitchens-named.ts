import { oneOf } from '@retare/core';
import type { LoadedSettings } from '@retare/larder';
import { Stop } from './stop.js';

/**
 * The kitchens that an option names, with commas between.
 *
 * @param outcome What the command has left undone, for the message.
 * @throws {Stop} For a kitchen that the larder does not have.
 */
export function kitchensNamed(ids: string, site: LoadedSettings, outcome: string): string[] {
  return ids.split(',').map((id) => kitchenNamed(id.trim(), site, outcome));
}

/**
 * The one kitchen that an option names.
 *
 * @param outcome What the command has left undone, for the message.
 * @throws {Stop} For a kitchen that the larder does not have.
 */
export function kitchenNamed(id: string, { larder }: LoadedSettings, outcome: string): string {
  if (larder.kitchens.has(id)) return id;
  throw new Stop(`There is no kitchen \`${id}\`. Use ${oneOf([...larder.kitchens.keys()])}. ${outcome}`);
}
