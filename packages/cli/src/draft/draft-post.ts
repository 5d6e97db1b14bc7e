import { isUtf8 } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { parsePost, preserveQuestion } from '@retare/check';
import { isRefusal, type Reauthored, type Refusal, reauthor } from '@retare/core';
import type { LoadedSettings } from '@retare/larder';
import { type Draft, draftsOf, matterOf, type RecipeReading, readPost, settingOf, withoutMark } from 'remark-retare';
import { VFile } from 'vfile';
import { type DraftFinding, findingsIn } from './findings-in.js';
import { printBlock } from './print-block.js';

/** A version of a post for one kitchen, drafted. */
export interface DraftedVersion {
  kitchen: string;
  result: Reauthored;
  blocks: { draft: Draft; text: string }[];
  /** Errors that the check finds in the blocks: what is drafted has to be publishable. */
  errors: DraftFinding[];
}

/** A post and what was drafted for it. */
export interface DraftedPost {
  /** As the command names it. */
  path: string;
  /** Absolute. */
  file: string;
  /** The byte order mark before its text, where it has one. */
  mark: string;
  /** Whether the file is UTF-8 throughout: any other byte would come out as another. */
  isUtf8: boolean;
  source: string;
  /** Null for a post without a recipe. */
  reading: RecipeReading | null;
  versions: DraftedVersion[];
  refused: { kitchen: string; refusal: DraftRefusal }[];
}

/** Why a post is not drafted: as re-authoring refuses it, or because it may be a preserve and does not say. */
export type DraftRefusal = Refusal | { kind: 'ask-preserve'; ask: string };

/** What to draft. */
export interface DraftRequest {
  kitchens: readonly string[];
  anchor: string | undefined;
  cwd: string;
}

/** Re-authors a post for kitchens. Nothing is written. */
export function draftPost(file: string, site: LoadedSettings, request: DraftRequest): DraftedPost {
  const bytes = readFileSync(file);
  const whole = bytes.toString('utf8');
  const source = withoutMark(whole);
  const { reading: read, asked } = readingOf(source, file, site);
  const post: DraftedPost = {
    path: relative(request.cwd, file),
    file,
    mark: whole.slice(0, whole.length - source.length),
    isUtf8: isUtf8(bytes),
    source,
    reading: read,
    versions: [],
    refused: [],
  };
  const { reading } = post;
  if (reading === null || reading.recipe.parts.every(({ native }) => native.lines.length === 0)) return post;
  const setting = settingOf(site.larder, site.settings);
  for (const kitchen of request.kitchens) {
    if (asked !== null) {
      post.refused.push({ kitchen, refusal: { kind: 'ask-preserve', ask: asked } });
      continue;
    }
    const options = request.anchor === undefined ? {} : { anchor: request.anchor };
    const result = reauthor(reading.recipe, kitchen, setting, options);
    if (isRefusal(result)) {
      post.refused.push({ kitchen, refusal: result });
      continue;
    }
    const drafts = result.infeasible === null ? draftsOf(result, reading, setting) : [];
    const blocks = drafts.map((draft) => ({ draft, text: printBlock(draft, source) }));
    const errors = findingsIn(blocks, source, post.path, { ...site, only: [kitchen] });
    post.versions.push({ kitchen, result, blocks, errors });
  }
  return post;
}

/** The recipe, and what the post is asked where it may be a preserve and does not say. */
function readingOf(
  source: string,
  path: string,
  { larder, settings }: LoadedSettings,
): { reading: RecipeReading | null; asked: string | null } {
  const file = new VFile({ value: source, path });
  const tree = parsePost(file);
  const reading = readPost(tree, file, matterOf(tree, file), larder, settings);
  return { reading, asked: reading === null ? null : (preserveQuestion(tree, reading)?.ask ?? null) };
}
