import { defaultSettings, type LarderData, type Settings } from '@retare/larder';
import type { Root } from 'mdast';
import type { Plugin, Processor } from 'unified';
import type { VFile } from 'vfile';
import { larderOf } from './larder-of.js';
import { placeInTree, placementsOf } from './place/place-recipe.js';
import { matterOf } from './read/matter-of.js';
import { readPost } from './read/read-post.js';
import type { RecipeReading } from './read/reading.js';
import { attachSyntax } from './syntax/attach.js';
import { printAsWritten } from './syntax/print-as-written.js';
import { versionsOf } from './versions-of.js';

/** The plugin's option: plain data, so that a cache can tell when it changed. */
export interface RemarkRetareOptions {
  /** A site's settings; what is left out has its default. */
  settings?: Partial<Settings>;
  /** What the site's own larder file holds, checked by `readSiteLarder`. */
  larder?: LarderData;
  /** A stamp of everything that pages depend on. It is not read: a cache follows it. */
  digest?: string;
}

/**
 * Reads quantity annotations in recipe Markdown and puts every kitchen's version in their place. Brings its own directives syntax.
 *
 * What cannot be understood is reported on the file and comes out as it was written. Whether amounts can be bought and measured is
 * the business of `@retare/check`.
 */
const remarkRetare: Plugin<[RemarkRetareOptions?], Root> = function (
  this: Processor,
  options: RemarkRetareOptions = {},
) {
  attachSyntax(this);
  return (tree, file) => {
    // Read for each post: a development server changes them when the site's files change.
    const settings: Settings = { ...defaultSettings, ...options.settings };
    const larder = larderOf(options.larder);
    printAsWritten(this);
    const reading = readPost(tree, file, matterOf(tree, file), larder, settings);
    if (reading === null) return;
    report(reading, file);
    placeInTree(tree, placementsOf(tree, reading, versionsOf(reading, larder, settings)));
  };
};

export default remarkRetare;

/** A plugin that runs twice says everything once. */
function report(reading: RecipeReading, file: VFile): void {
  const keyOf = ({ name, reason }: VFile['messages'][number]): string => `${name} ${reason}`;
  const said = new Set(file.messages.map(keyOf));
  for (const { message, place, actual, expected } of reading.faults) {
    const at = place === undefined ? {} : { place };
    const reported = file.message(message, { ...at, ruleId: 'annotation', source: 'retare' });
    Object.assign(reported, { actual, expected, fatal: false });
    if (said.has(keyOf(reported))) file.messages.pop();
  }
}
