import { parsePost } from '@retare/check';
import { type Kitchen, readMentions } from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import type { Root } from 'mdast';
import { matterOf, type RecipeReading, readPlainPost, readPost } from 'remark-retare';
import { VFile } from 'vfile';
import { foundValue, mentionValues, type ReadMention } from './mention-values.js';
import { lineOf, type ReadLine, withUnsettled } from './read-line.js';

/** What was understood of a post. */
export interface ReadReport {
  file: string;
  /** Its native kitchen; of a post without annotations a guess. */
  kitchen: string;
  /** From 0 to 1; 1 where the post or its site says so. */
  kitchenConfidence: number;
  makes: string | null;
  lines: ReadLine[];
  mentions: ReadMention[];
}

/**
 * What is understood of a post, annotated or plain.
 *
 * @param path As it is to be reported.
 */
export function readReport(text: string, path: string, larder: Larder, settings: Settings): ReadReport {
  const file = new VFile({ value: text, path });
  const tree = parsePost(file);
  const reading = readPost(tree, file, matterOf(tree, file), larder, settings);
  return reading === null || reading.recipe.parts.length === 0
    ? plainReport(tree, text, path, larder, settings)
    : annotatedReport(reading, path);
}

function annotatedReport(reading: RecipeReading, file: string): ReadReport {
  const { recipe } = reading;
  const lines = recipe.parts.flatMap(({ native }) =>
    native.lines.map((line) => {
      const place = reading.lines.get(line.key)?.item.position?.start.line ?? 0;
      return lineOf(line, place, native.label);
    }),
  );
  const mentions = recipe.steps.flatMap(({ native }) =>
    native.mentions.flatMap((mention) => {
      const line = reading.mentions.get(mention.key)?.node.position?.start.line ?? 0;
      return mentionValues(mention).map((value) => ({ line, ...value }));
    }),
  );
  return {
    file,
    kitchen: recipe.kitchen,
    kitchenConfidence: 1,
    makes: recipe.makes,
    lines,
    mentions: inOrder(mentions),
  };
}

function plainReport(tree: Root, text: string, file: string, larder: Larder, settings: Settings): ReadReport {
  const post = readPlainPost(tree, text, larder, servedBy(larder, settings));
  const own = larder.kitchens.get(post.guess.kitchen);
  const taken = new Set(post.lines.map(({ line }) => line));
  const mentions = bodyLines(tree, text)
    .filter(({ line }) => !taken.has(line))
    .flatMap(({ line, words }) => readMentions(words).map((mention) => ({ line, ...foundValue(mention, own) })));
  const lines = post.lines.map(({ read, line, part }) =>
    withUnsettled(lineOf(read, line, part), post.guess.confidence),
  );
  return {
    file,
    kitchen: post.guess.kitchen,
    kitchenConfidence: Number(post.guess.confidence.toFixed(2)),
    makes: post.makes,
    lines,
    mentions,
  };
}

/** Lines of the body: front matter and code are no text of the recipe. */
function bodyLines(tree: Root, text: string): { line: number; words: string }[] {
  const passed = new Set<number>();
  for (const node of tree.children) {
    if (node.type !== 'yaml' && node.type !== 'code') continue;
    for (let line = node.position?.start.line ?? 0; line <= (node.position?.end.line ?? -1); line++) passed.add(line);
  }
  return text.split(/\r?\n/).flatMap((words, index) => (passed.has(index + 1) ? [] : [{ line: index + 1, words }]));
}

/** The kitchens that a site serves: a guess is one of them. */
function servedBy({ kitchens }: Larder, settings: Settings): ReadonlyMap<string, Kitchen> {
  return new Map(
    settings.kitchens.flatMap((id) => {
      const kitchen = kitchens.get(id);
      return kitchen === undefined ? [] : [[id, kitchen]];
    }),
  );
}

function inOrder(mentions: readonly ReadMention[]): ReadMention[] {
  return [...mentions].sort((a, b) => a.line - b.line);
}
