import type { LoadedSettings } from '@retare/larder';
import { Command, Option } from 'commander';
import { type DraftedPost, type DraftedVersion, draftPost } from '../draft/draft-post.js';
import { refusalWords } from '../draft/obstacle-words.js';
import { reasons } from '../draft/reasons.js';
import { versionJson } from '../draft/version-json.js';
import { writeDrafts } from '../draft/write-drafts.js';
import { kitchensNamed } from '../kitchens-named.js';
import { loadSite } from '../load-site.js';
import type { Output } from '../output.js';
import { postFiles } from '../post-files.js';
import { Stop } from '../stop.js';

interface DraftOptions {
  for: string;
  anchor?: string;
  write?: boolean;
  format: 'text' | 'json';
}

/** `retare draft`: re-authors a post for other kitchens. Exit code 0 where every version was drafted, 1 where one could not be. */
export function draftCommand(output: Output, done: (code: number) => void): Command {
  return new Command('draft')
    .description('Re-authors a post for other kitchens: prints the blocks to put into it, and the reasons.')
    .argument('<post...>', 'posts: files, folders or globs')
    .requiredOption('--for <ids>', 'the kitchens, with commas between')
    .option('--anchor <food>', 'the food whose packs or pieces set the batch, as the post calls it')
    .option('--write', 'put the blocks into the post, after the native ones')
    .addOption(new Option('--format <format>', 'how drafts are written').choices(['text', 'json']).default('text'))
    .action((posts: string[], options: DraftOptions) => done(draft(posts, options, output)));
}

function draft(args: readonly string[], options: DraftOptions, output: Output): number {
  const paths = postFiles(args, output.cwd, 'Nothing was drafted.');
  const site = loadSite(paths[0], output.cwd, 'Nothing was drafted.');
  const kitchens = [...new Set(kitchensNamed(options.for, site, 'Nothing was drafted.'))];
  const posts = paths.map((path) => draftPost(path, site, { kitchens, anchor: options.anchor, cwd: output.cwd }));
  for (const post of posts) stopForUsage(post, options, site);
  if (options.format === 'json') output.out(`${JSON.stringify(posts.map(postJson), null, 2)}\n`);
  else output.out(posts.map((post) => postText(post, site)).join('\n'));
  const failed = posts.flatMap((post) => failuresOf(post, site));
  for (const failure of failed) output.err(`${failure}\n`);
  if (failed.length > 0) {
    if (options.write) output.err('Nothing was written.\n');
    return 1;
  }
  return options.write ? writeDrafts(posts, output) : 0;
}

/** What the command asks and no post can give is a slip in the command. */
function stopForUsage({ refused, path }: DraftedPost, { anchor }: DraftOptions, { larder }: LoadedSettings): void {
  for (const { kitchen, refusal } of refused) {
    const own = larder.kitchens.get(kitchen);
    const isUsage = refusal.kind === 'native-kitchen' || (refusal.kind === 'unknown-anchor' && anchor !== undefined);
    if (isUsage && own !== undefined) throw new Stop(`${refusalWords(refusal, path, own)} Nothing was drafted.`);
  }
}

/** Why the post has no version, or none that could be published, a sentence each. */
function failuresOf(post: DraftedPost, { larder }: LoadedSettings): string[] {
  const { path, reading, refused, versions } = post;
  if (reading === null || reading.recipe.parts.length === 0)
    return [`${path} has no \`ingredients\` block, so there is nothing to draft.`];
  if (reading.recipe.parts.every(({ native }) => native.lines.length === 0))
    return [
      `${path} lists nothing in its \`ingredients\` block, so there is nothing to draft. Write a list, an item for each line.`,
    ];
  const words = refused.flatMap(({ kitchen, refusal }) => {
    const own = larder.kitchens.get(kitchen);
    return own === undefined ? [] : [refusalWords(refusal, path, own)];
  });
  return [...new Set(words), ...versions.flatMap((version) => failureOf(version, path))];
}

function failureOf({ kitchen, result, errors }: DraftedVersion, path: string): string[] {
  if (result.infeasible !== null)
    return [`${path} has no version for \`${kitchen}\`; what stands in the way is said above.`];
  if (errors.length === 0) return [];
  const found = errors.map(({ message, rule }) => `  ${message} (${rule})`);
  return [[`The version of ${path} for \`${kitchen}\` would not pass the check:`, ...found].join('\n')];
}

function postJson({ path, reading, versions }: DraftedPost): { file: string; versions: unknown[] } {
  return {
    file: path,
    versions: reading === null ? [] : versions.map(({ result, errors }) => versionJson(result, reading, errors)),
  };
}

function postText(post: DraftedPost, { larder }: LoadedSettings): string {
  return post.versions
    .map(({ kitchen, blocks, result }) => {
      const name = larder.kitchens.get(kitchen)?.name ?? kitchen;
      const printed = blocks.map(({ text }) => `${text}\n\n`).join('');
      return `${post.path}, for ${name}\n\n${printed}${reasons(result)}\n`;
    })
    .join('\n');
}
