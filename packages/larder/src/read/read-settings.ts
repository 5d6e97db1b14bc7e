import { unknownKitchen } from '../build/check-names.js';
import { builtInLarder } from '../built-in-larder.js';
import { reauthoringOf } from '../schema/reauthoring-schema.js';
import { type SettingsYaml, settingsSchema } from '../schema/settings-schema.js';
import { defaultSettings, type Settings } from '../settings.js';
import { faultsOf } from './faults-of.js';
import type { Fault, Problem } from './problem.js';
import { readYaml } from './read-yaml.js';
import { withoutEmptyKeys } from './without-empty-keys.js';

/** A site's settings, and what is wrong with them. */
export interface SettingsReading {
  /** Keys with a problem have their default. */
  settings: Settings;
  problems: readonly Problem[];
}

/**
 * Reads a site's settings file, `retare.yaml`.
 *
 * @param path What to call the file in problems.
 * @param kitchens The kitchens that may be named. Left out, they are the built-in ones, and are not checked where the file
 *   names a larder file, which may hold more.
 * @returns Never throws on bad text: problems with line and column instead.
 */
export function readSettings(text: string, path: string, kitchens?: ReadonlyMap<string, unknown>): SettingsReading {
  const reading = readYaml(text, path);
  if (reading.problems.length > 0) return { settings: defaultSettings, problems: reading.problems };
  const value = withoutEmptyKeys(reading.value);
  const faults = faultsOf(settingsSchema, value);
  const settings = settingsOf(sound(value, faults));
  const known = kitchens ?? (settings.larder === null ? builtInLarder().kitchens : undefined);
  const named = known === undefined ? [] : checkKitchens(settings, known);
  return {
    settings: settingsOf(sound(value, [...faults, ...named])),
    problems: reading.locateAll([...faults, ...named]),
  };
}

/** The keys of a settings file that no fault touches. */
function sound(value: unknown, faults: readonly Fault[]): SettingsYaml {
  if (faults.some(({ path }) => path.length === 0)) return {};
  const faulty = new Set(faults.map(({ path }) => path[0]));
  // Sound: what the schema refuses is taken out.
  return Object.fromEntries(Object.entries(value as object).filter(([key]) => !faulty.has(key))) as SettingsYaml;
}

function settingsOf(yaml: SettingsYaml): Settings {
  return {
    kitchens: yaml.kitchens ?? defaultSettings.kitchens,
    kitchen: yaml.kitchen ?? defaultSettings.kitchen,
    mustHold: yaml['must-hold'] ?? defaultSettings.mustHold,
    severity: (yaml.severity as Settings['severity'] | undefined) ?? defaultSettings.severity,
    tolerance: yaml.tolerance ?? defaultSettings.tolerance,
    reauthoring: yaml.reauthoring === undefined ? defaultSettings.reauthoring : reauthoringOf(yaml.reauthoring),
    larder: yaml.larder ?? defaultSettings.larder,
    posts: yaml.posts ?? defaultSettings.posts,
  };
}

function checkKitchens(settings: Settings, known: ReadonlyMap<string, unknown>): Fault[] {
  const named = [
    ...[...settings.kitchens.entries()].map(([index, id]) => ({ path: ['kitchens', index], id })),
    { path: ['kitchen'], id: settings.kitchen },
    ...[...settings.mustHold.entries()].map(([index, id]) => ({ path: ['must-hold', index], id })),
  ];
  const unknown = named.filter(({ id }) => !known.has(id)).map(({ path, id }) => unknownKitchen(path, id, known));
  const unserved = [...settings.mustHold.entries()]
    .filter(([, id]) => known.has(id) && !settings.kitchens.includes(id))
    .map(([index, id]) => ({
      path: ['must-hold', index],
      message: `\`must-hold\` names \`${id}\`, which is not served. Add it to \`kitchens\`, or leave it out`,
      allowed: settings.kitchens,
    }));
  return [...unknown, ...unserved];
}
