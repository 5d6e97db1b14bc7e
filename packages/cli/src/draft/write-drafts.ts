import { parsePost } from '@retare/check';
import { VFile } from 'vfile';
import type { Output } from '../output.js';
import type { DraftedPost } from './draft-post.js';
import { type Insertion, insertBlocks } from './insert-blocks.js';
import { writeFile } from './write-file.js';

/**
 * Puts drafted blocks into their posts, after the native block and the versions that it has.
 *
 * @returns The exit code: 1 where a post cannot take them, and then no post is written.
 */
export function writeDrafts(posts: readonly DraftedPost[], output: Output): number {
  // What hinders one block hinders the next as well.
  const problems = [...new Set(posts.flatMap((post) => hindrances(post)))];
  if (problems.length > 0) {
    output.err(`${problems.join('\n')}\nNothing was written.\n`);
    return 1;
  }
  for (const post of posts) {
    const { text } = insertBlocks(post.source, insertionsOf(post));
    writeFile(post.file, post.mark + text);
    const kitchens = post.versions.map(({ kitchen }) => `\`${kitchen}\``).join(', ');
    output.err(`Wrote the version for ${kitchens} into ${post.path}.\n`);
  }
  return 0;
}

function hindrances({ versions, path, source, isUtf8 }: DraftedPost): string[] {
  if (!isUtf8)
    return [
      `${path} holds characters that are not UTF-8, which writing would change. Save it as UTF-8, or copy the version by hand.`,
    ];
  const inTheOpen = placesInTheOpen(source);
  return versions.flatMap(({ kitchen, blocks }) => {
    if (blocks.some(({ draft }) => draft.authored.some((each) => each.kitchen === kitchen)))
      return [
        `${path} has a version for \`${kitchen}\` already. Take it out first, or compare it with what is printed without \`--write\`.`,
      ];
    const inside = blocks.some(({ draft }) => {
      const start = draft.native.position?.start.offset ?? -1;
      return !beginsLine(start, source) && !inTheOpen.has(start);
    });
    return inside ? [`In ${path} a block stands inside a list or a quotation. Copy the version by hand.`] : [];
  });
}

/** Where the blocks begin that stand in nothing else: up to three spaces in, as Markdown lets them. */
function placesInTheOpen(source: string): Set<number | undefined> {
  return new Set(parsePost(new VFile(source)).children.map(({ position }) => position?.start.offset));
}

function beginsLine(offset: number, source: string): boolean {
  return offset === 0 || source[offset - 1] === '\n';
}

/** Kitchens in the order in which they were asked for. */
function insertionsOf({ versions }: DraftedPost): Insertion[] {
  return versions.flatMap(({ blocks }) =>
    blocks.map(({ draft, text }) => {
      const ends = [draft.native, ...draft.authored.map(({ node }) => node)].map(
        (node) => node.position?.end.offset ?? 0,
      );
      return { after: Math.max(...ends), text };
    }),
  );
}
