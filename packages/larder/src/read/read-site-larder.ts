import { assemble } from '../build/assemble.js';
import { builtInLarder } from '../built-in-larder.js';
import type { Larder } from '../larder.js';
import { foodSchema } from '../schema/food-schema.js';
import { kitchenSchema } from '../schema/kitchen-schema.js';
import { type LarderData, larderSchema } from '../schema/larder-schema.js';
import { faultsOf } from './faults-of.js';
import type { Fault, Problem } from './problem.js';
import { readYaml } from './read-yaml.js';
import { withoutEmptyKeys } from './without-empty-keys.js';

/** A site's larder file as data to extend a larder with, or what is wrong with it. */
export interface SiteLarderReading {
  /** Null where there are problems. */
  data: LarderData | null;
  problems: readonly Problem[];
}

/**
 * Reads a site's larder file: foods and kitchens that it adds or overrides.
 *
 * @param path What to call the file in problems.
 * @param base The larder that it extends.
 * @returns Never throws on bad text: problems with line and column instead.
 */
export function readSiteLarder(text: string, path: string, base: Larder = builtInLarder()): SiteLarderReading {
  const reading = readYaml(text, path);
  if (reading.problems.length > 0) return { data: null, problems: reading.problems };
  const value = withoutEmptyKeys(reading.value);
  const faults = [...faultsOf(larderSchema, value), ...(isBlock(value) ? missingKeys(value, base) : [])];
  if (faults.length > 0) return { data: null, problems: reading.locateAll(faults) };
  // Sound: `larderSchema` changes nothing and has just let it through.
  const data = value as LarderData;
  const { faults: found } = assemble(base, data);
  return found.length > 0 ? { data: null, problems: reading.locateAll(found) } : { data, problems: [] };
}

/** New foods and kitchens have nothing to fall back on: say which keys they lack. */
function missingKeys(value: Record<string, unknown>, base: Larder): Fault[] {
  const foods = blocksOf(value.foods)
    .filter(([id, food]) => !base.foods.has(id) && food.remove !== true)
    .flatMap(([id, food]) => faultsOf(foodSchema, { id, ...food }, ['foods', id]))
    .filter(({ path, message }) => path.length === 3 && message.includes(' is missing: '));
  const kitchens = blocksOf(value.kitchens)
    .filter(([id, kitchen]) => !base.kitchens.has(id) && kitchen.extends === undefined)
    .flatMap(([id, kitchen]) => unfinishedKitchen(id, kitchen));
  return [...foods, ...kitchens];
}

function unfinishedKitchen(id: string, kitchen: Record<string, unknown>): Fault[] {
  const missing = Object.keys(kitchenSchema.shape).filter((key) => kitchen[key] === undefined);
  if (missing.length === 0) {
    return faultsOf(kitchenSchema, kitchen, ['kitchens', id]).filter(({ message }) =>
      message.includes(' is missing: '),
    );
  }
  const keys = missing.map((key) => `\`${key}\``).join(', ');
  const message = `\`${id}\` is a new kitchen without ${keys}. Write \`extends\` with the kitchen that it is like, or add them`;
  return [{ path: ['kitchens', id], on: 'key', message }];
}

const isBlock = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const blocksOf = (value: unknown): [string, Record<string, unknown>][] =>
  isBlock(value)
    ? Object.entries(value).filter((pair): pair is [string, Record<string, unknown>] => isBlock(pair[1]))
    : [];
