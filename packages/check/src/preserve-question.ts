import type { Paragraph, Root } from 'mdast';
import { placeOf, type RecipeReading, wordsOf } from 'remark-retare';
import { SKIP, visit } from 'unist-util-visit';

/** What a post is asked that talks of preserving and does not say whether it is a preserve. */
export interface PreserveQuestion {
  /** The word that tells of it, as written, and where. */
  word: string;
  place: ReturnType<typeof placeOf>;
  /** What to say to the author, behind the post's name. */
  ask: string;
  expected: string[];
}

/** Words of preserving. Each alone is enough to ask. */
const preserving =
  /(?<![\p{L}\p{N}])(?:jars?|canning|canned it|water[ -]bath|brined?|the cure|curing|gravad ?lax|gravlax|sterili[sz](?:e|ed|ing))(?![\p{L}\p{N}])/iu;

/**
 * The question to a post that talks of preserving; null where it says whether it is a preserve, or where no word tells of it. An
 * ingredient line that is bought in a jar says nothing of it.
 */
export function preserveQuestion(tree: Root, reading: RecipeReading): PreserveQuestion | null {
  if (reading.recipe.preserve !== null || reading.recipe.parts.length === 0) return null;
  const lines = new Set<Paragraph>([...reading.lines.values()].map(({ paragraph }) => paragraph));
  let found: PreserveQuestion | null = null;
  visit(tree, (node) => {
    if (found !== null || (node.type === 'paragraph' && lines.has(node))) return SKIP;
    if (node.type !== 'paragraph' && node.type !== 'heading') return;
    const words = wordsOf(node.children);
    const match = preserving.exec(words.text);
    if (match !== null) {
      const [word] = match;
      const place = placeOf(words, match.index, match.index + word.length, reading.source, node.position);
      found = { word, place, ask: asking(word), expected: ['preserve: true', 'preserve: false'] };
    }
    return SKIP;
  });
  return found;
}

function asking(word: string): string {
  return `talks of \`${word}\` and does not say whether it is a preserve, whose amounts must never be changed. Write \`preserve: true\` or \`preserve: false\` under \`retare\` in its front matter`;
}
