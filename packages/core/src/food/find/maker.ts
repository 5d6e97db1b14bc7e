import type { Food } from '../food.js';
import { longestName } from './longest-name.js';
import type { Named, PhraseWord, Speech } from './speech.js';

/** Roles of what is the same whoever makes it. Meat, milk and egg are not among them: a maker's name may say that it is none. */
const roles: ReadonlySet<Food['role']> = new Set([
  'salt',
  'cure',
  'flour',
  'leavening',
  'gelling',
  'acid',
  'seasoning',
]);
const notPlants = ['milk', 'egg', 'fish', 'crustaceans', 'molluscs'];

/** A maker's name that no food has, in capitals before a food that has none: `Harbour Bell kosher salt`. */
export function ofMaker(words: readonly PhraseWord[], speech: Speech): Named | null {
  const at = words.findIndex(({ capital }) => !capital);
  const first = words[at];
  if (at < 1 || at > 3 || first === undefined || words.slice(0, at).every(({ known }) => known)) return null;
  const found = longestName(words.slice(at), speech);
  const food = found === null ? undefined : speech.foods.get(found.id);
  if (food === undefined || food.keeps.where !== 'cupboard' || !roles.has(food.role)) return null;
  return found?.start === first.start && !food.allergens.some((each) => notPlants.includes(each)) ? found : null;
}
