import type { Larder, Settings } from '@retare/larder';
import { matterOf, type RecipeReading, readPost, versionsOf, withoutMark } from 'remark-retare';
import { VFile } from 'vfile';
import { VFileMessage } from 'vfile-message';
import { excused } from './excuse.js';
import type { Finding } from './finding.js';
import { findingsOf } from './findings-of.js';
import { mentionsRetare } from './mentions-retare.js';
import { misspeltBlocks } from './misspelt-blocks.js';
import { parsePost } from './parse-post.js';
import { ratioDrifts } from './rules/ratio-drift.js';
import { staleVersions } from './rules/stale-version.js';
import { annotationFindings, askPreserve, missingFrom } from './rules-of-the-text.js';

/** What the check of one post saw. */
export interface CheckedPost {
  /** The file, with a message for every finding, in reading order. */
  file: VFile;
  /** Amounts, temperatures, pans and lengths that were read. */
  amounts: number;
  /** Whether the post has any annotation of ours. */
  isRecipe: boolean;
}

/** What a post is checked against. */
export interface Site {
  larder: Larder;
  settings: Settings;
  /** Kitchens to tell findings of, served or not; the native one and all that are served where it is not given. */
  only?: readonly string[];
}

/** Checks one post. A finding is a message on the file; nothing is thrown for what an author wrote. */
export function checkPost(written: string, path: string, site: Site): CheckedPost {
  const text = withoutMark(written);
  const file = new VFile({ value: text, path });
  const { larder, settings } = site;
  const slips = misspeltBlocks(text, settings);
  for (const slip of slips) addMessage(file, slip);
  if (!mentionsRetare(text)) return { file, amounts: 0, isRecipe: slips.length > 0 };
  const tree = parsePost(file);
  const reading = readPost(tree, file, matterOf(tree, file), larder, settings);
  if (reading === null) return { file, amounts: 0, isRecipe: slips.length > 0 };
  const findings = [
    ...annotationFindings(reading, settings),
    ...missingFrom(reading, larder, settings),
    ...askPreserve(tree, reading, settings),
    ...authoredFindings(reading, path, site),
    ...versionFindings(reading, site),
  ];
  for (const finding of excused(findings, tree, text, settings).sort(inReadingOrder)) addMessage(file, finding);
  const { parts, steps } = reading.recipe;
  return { file, amounts: amountsIn(reading), isRecipe: parts.length + steps.length + reading.markers.length > 0 };
}

/** What is to be said of versions that an author wrote, as against their native lines. */
function authoredFindings(reading: RecipeReading, path: string, { larder, settings, only }: Site): Finding[] {
  const findings = [...staleVersions({ reading, larder, settings, path }), ...ratioDrifts(reading, larder, settings)];
  return findings.filter(({ kitchens }) => only === undefined || kitchens.every((id) => only.includes(id)));
}

function versionFindings(reading: RecipeReading, { larder, settings, only }: Site): Finding[] {
  const served = only === undefined ? settings : { ...settings, kitchens: only };
  const versions = versionsOf(reading, larder, served).filter(
    ({ kitchen }) => only === undefined || only.includes(kitchen.id),
  );
  return findingsOf(versions, reading, settings);
}

/** Findings about the whole file first. */
function inReadingOrder(a: Finding, b: Finding): number {
  const at = (finding: Finding): number => finding.place?.start.offset ?? -1;
  return at(a) - at(b);
}

function addMessage(
  file: VFile,
  { text, rule, severity, kitchens, actual, expected, note, place, cause }: Finding,
): void {
  const message = file.message(text, {
    ...(place === undefined ? {} : { place }),
    ...(cause === undefined ? {} : { cause: new VFileMessage(cause.text, cause.place) }),
    ruleId: rule,
    source: 'retare',
  });
  message.fatal = severity === 'error';
  Object.assign(message, { actual, expected, kitchens, ...(note === null ? {} : { note }) });
}

function amountsIn({ recipe, mentions }: RecipeReading): number {
  const blocks = recipe.parts.flatMap((part) => [part.native, ...part.authored]);
  const lines = blocks.flatMap((block) => block.lines).filter(({ reading }) => reading.amounts.length > 0);
  return lines.length + mentions.size;
}
