import type { LoadedSettings } from '@retare/larder';
import { Stop } from './stop.js';

/**
 * The kitchens that an option names, with commas between.
 *
 * @param outcome What the command has left undone, for the message.
 * @throws {Stop} For a kitchen that the larder does not have.
 */
export function kitchensNamed(ids: string, { larder }: LoadedSettings, outcome: string): string[] {
  const known = [...larder.kitchens.keys()];
  return ids.split(',').map((id) => {
    const name = id.trim();
    if (known.includes(name)) return name;
    throw new Stop(`There is no kitchen \`${name}\`. Use ${known.map((each) => `\`${each}\``).join(', ')}. ${outcome}`);
  });
}
