import { checkPost, type Site } from '@retare/check';
import type { Draft } from 'remark-retare';
import { insertBlocks } from './insert-blocks.js';

/** An error that the check finds in a drafted block. */
export interface DraftFinding {
  rule: string;
  message: string;
}

/** The errors of drafted blocks, read back by the check as if they stood in the post. */
export function findingsIn(
  blocks: readonly { draft: Draft; text: string }[],
  source: string,
  path: string,
  site: Site,
): DraftFinding[] {
  // Right behind the native block a draft comes before a version that the post has already.
  const insertions = blocks.map(({ draft, text }) => ({ after: draft.native.position?.end.offset ?? 0, text }));
  const { text, inserted } = insertBlocks(source, insertions);
  const { file } = checkPost(text, path, site);
  return file.messages.flatMap(({ place, fatal, reason, ruleId }) => {
    const at = place !== undefined && 'start' in place ? place.start.offset : undefined;
    const own = at !== undefined && inserted.some(({ start, end }) => start <= at && at < end);
    return own && fatal === true ? [{ rule: ruleId ?? '', message: reason }] : [];
  });
}
