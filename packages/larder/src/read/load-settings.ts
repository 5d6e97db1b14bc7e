import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { builtInLarder } from '../built-in-larder.js';
import { extendLarder } from '../extend-larder.js';
import type { Larder } from '../larder.js';
import type { LarderData } from '../schema/larder-schema.js';
import type { Settings } from '../settings.js';
import type { Problem } from './problem.js';
import { readSettings } from './read-settings.js';
import { readSiteLarder } from './read-site-larder.js';
import { readYaml } from './read-yaml.js';

/** A site's settings and larder, as they lie on disk. */
export interface LoadedSettings {
  settings: Settings;
  /** The built-in larder, extended by the site's own. */
  larder: Larder;
  /** What the site's larder file holds, as plain data; null without one, or with a broken one. */
  siteLarder: LarderData | null;
  problems: readonly Problem[];
  /** SHA-256 over settings and larder, in hexadecimal: what was worked out with the one holds as long as it stays. */
  digest: string;
}

const settingsFile = 'retare.yaml';

const unreadableSettings: Problem = {
  path: settingsFile,
  line: 1,
  column: 1,
  key: '',
  message: `\`${settingsFile}\` is there but cannot be read. Make it a file that this user may read`,
};

/**
 * Loads `retare.yaml` and the larder file that it names. No `retare.yaml` means the defaults.
 *
 * @param rootDir The site's root.
 * @returns Problems name files relative to the root. What has a problem is left at its default.
 */
export function loadSettings(rootDir: string): LoadedSettings {
  const path = resolve(rootDir, settingsFile);
  const read = readFile(path);
  const text = read ?? '';
  const { settings: first } = readSettings(text, settingsFile);
  const site = first.larder === null ? ownLarder() : siteLarder(rootDir, text, first.larder);
  // Kitchens can be checked only now that the site's own are known; a broken larder file may hold the missing ones.
  const { settings, problems } = readSettings(
    text,
    settingsFile,
    site.problems.length === 0 ? site.larder.kitchens : undefined,
  );
  const unreadable = read === undefined && existsSync(path) ? [unreadableSettings] : [];
  const digest = createHash('sha256').update(site.larder.digest).update(JSON.stringify(settings)).digest('hex');
  return {
    settings,
    larder: site.larder,
    siteLarder: site.data,
    problems: [...unreadable, ...problems, ...site.problems],
    digest,
  };
}

interface LoadedLarder {
  larder: Larder;
  data: LarderData | null;
  problems: readonly Problem[];
}

const ownLarder = (): LoadedLarder => ({ larder: builtInLarder(), data: null, problems: [] });

function siteLarder(rootDir: string, settingsText: string, path: string): LoadedLarder {
  const text = readFile(resolve(rootDir, path));
  if (text === undefined) {
    const message = `There is no larder file \`${path}\`. Write its path from the folder of \`${settingsFile}\``;
    return {
      larder: builtInLarder(),
      data: null,
      problems: [readYaml(settingsText, settingsFile).locate({ path: ['larder'], message })],
    };
  }
  const { data, problems } = readSiteLarder(text, path);
  return { larder: data === null ? builtInLarder() : extendLarder(builtInLarder(), data), data, problems };
}

/** The text of a file, undefined where there is no file to read. */
function readFile(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
