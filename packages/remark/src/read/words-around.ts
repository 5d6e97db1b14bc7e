import type { Around } from '@retare/core';
import type { Nodes, Parents, PhrasingContent } from 'mdast';
import { wordsOf } from './words-of.js';

/** More nodes than these beside an annotation say nothing of it: a long line is read in linear time. */
const nearest = 4;

/** The words before and behind the child of a line that stands at an index. */
export function wordsAround(index: number | undefined, parent: Parents | undefined): Around {
  if (index === undefined || parent === undefined) return { before: '', behind: '' };
  const words = (nodes: readonly Nodes[]): string => wordsOf(nodes as PhrasingContent[]).text;
  const { children } = parent;
  return {
    before: words(children.slice(Math.max(0, index - nearest), index)),
    behind: words(children.slice(index + 1, index + 1 + nearest)),
  };
}
