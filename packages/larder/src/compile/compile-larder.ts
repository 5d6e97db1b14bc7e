import { indexNames } from '@retare/core';
import { assemble, emptyLarder } from '../build/assemble.js';
import { faultsOf } from '../read/faults-of.js';
import type { Fault, Problem } from '../read/problem.js';
import { readYaml, type YamlReading } from '../read/read-yaml.js';
import { type FoodYaml, foodFileSchema } from '../schema/food-schema.js';
import { type KitchenEntry, kitchenEntrySchema, kitchenSchema } from '../schema/kitchen-schema.js';
import { defaultSettings } from '../settings.js';
import type { CompiledLarder } from './compiled-text.js';

/** A data file of the package: `foods/flour.yaml`, `kitchens/us.yaml`. */
export interface DataFile {
  path: string;
  text: string;
}

/** Kitchens in the order of the chooser and foods in that of their ids, or what is wrong with the files. */
export interface Compilation {
  data: CompiledLarder;
  problems: readonly Problem[];
}

/** Where an id was read: its file, and the path inside it. */
interface Origin {
  reading: YamlReading;
  path: (string | number)[];
}

/** Puts the package's own data files together, checked. A kitchen's id is its file's name. */
export function compileLarder(kitchenFiles: readonly DataFile[], foodFiles: readonly DataFile[]): Compilation {
  const problems: Problem[] = [];
  const origins = new Map<string, Origin>();
  const kitchens = readKitchens(kitchenFiles, origins, problems);
  const foods = readFoods(foodFiles, origins, problems);
  const read = { kitchens: inOrderOfChoice(kitchens), foods: byId(foods) };
  if (problems.length > 0) return { data: { ...read, digest: '', names: {} }, problems };
  const { larder, faults } = assemble(emptyLarder, read);
  const data = { ...read, digest: larder.digest, names: faults.length > 0 ? {} : indexNames(larder.foods) };
  return { data, problems: faults.map((fault) => place(fault, origins)) };
}

function readKitchens(
  files: readonly DataFile[],
  origins: Map<string, Origin>,
  problems: Problem[],
): Map<string, KitchenEntry> {
  const kitchens = new Map<string, KitchenEntry>();
  for (const { path, text } of files) {
    const id = path.slice(path.lastIndexOf('/') + 1).replace(/\.yaml$/, '');
    const reading = readYaml(text, path);
    const extending = typeof reading.value === 'object' && reading.value !== null && 'extends' in reading.value;
    if (!collect(reading, faultsOf(extending ? kitchenEntrySchema : kitchenSchema, reading.value), problems)) continue;
    // Sound: its schema changes nothing and has just let it through.
    kitchens.set(id, reading.value as KitchenEntry);
    origins.set(`kitchens.${id}`, { reading, path: [] });
  }
  return kitchens;
}

function readFoods(
  files: readonly DataFile[],
  origins: Map<string, Origin>,
  problems: Problem[],
): Map<string, Omit<FoodYaml, 'id'>> {
  const foods = new Map<string, Omit<FoodYaml, 'id'>>();
  for (const { path, text } of files) {
    const reading = readYaml(text, path);
    if (!collect(reading, faultsOf(foodFileSchema, reading.value), problems)) continue;
    // Sound, as above.
    for (const [index, { id, ...food }] of (reading.value as FoodYaml[]).entries()) {
      if (foods.has(id))
        problems.push(reading.locate({ path: [index, 'id'], message: `There are two foods \`${id}\`. Keep one` }));
      foods.set(id, food);
      origins.set(`foods.${id}`, { reading, path: [index] });
    }
  }
  return foods;
}

/** Adds a file's problems; true if it has none. */
function collect(reading: YamlReading, faults: readonly Fault[], problems: Problem[]): boolean {
  const found = reading.problems.length > 0 ? reading.problems : reading.locateAll(faults);
  problems.push(...found);
  return found.length === 0;
}

function place({ path: [kind, id, ...inside], ...fault }: Fault, origins: ReadonlyMap<string, Origin>): Problem {
  const origin = origins.get(`${kind}.${id}`);
  if (origin === undefined) throw new RangeError(`A fault of ${kind} ${id}, which no file holds: ${fault.message}`);
  return origin.reading.locate({ ...fault, path: [...origin.path, ...inside] });
}

/** In the order of ids, so that the data does not change when a food moves to another file. */
function byId<Value>(entries: ReadonlyMap<string, Value>): Record<string, Value> {
  return Object.fromEntries([...entries].sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** In the order in which a reader is offered them, those not offered unless asked for behind them. */
function inOrderOfChoice(kitchens: ReadonlyMap<string, KitchenEntry>): Record<string, KitchenEntry> {
  const { kitchens: chosen } = defaultSettings;
  const place = (id: string) => (chosen.includes(id) ? chosen.indexOf(id) : chosen.length);
  const order = (one: string, other: string) => place(one) - place(other) || (one < other ? -1 : 1);
  return Object.fromEntries([...kitchens].sort(([one], [other]) => order(one, other)));
}
