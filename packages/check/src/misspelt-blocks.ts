import { near } from '@retare/core';
import type { Settings } from '@retare/larder';
import { annotations } from 'remark-retare';
import type { Finding } from './finding.js';
import { told } from './rules-of-the-text.js';

const blocks = Object.entries(annotations).flatMap(([name, { type }]) => (type === 'containerDirective' ? [name] : []));

/**
 * Blocks whose name is a slip of ours, `:::ingredient`: they are another plugin's for all that the parser knows, so that a reader would see
 * bare colons and nothing would be checked.
 */
export function misspeltBlocks(text: string, settings: Settings): Finding[] {
  if (!text.includes(':::')) return [];
  let offset = 0;
  return text.split('\n').flatMap((line, index) => {
    const at = offset;
    offset += line.length + 1;
    const name = /^ {0,3}:{3,}[ \t]?(\p{L}+)/u.exec(line)?.[1];
    if (name === undefined || blocks.includes(name)) return [];
    const meant = near(name.toLowerCase(), blocks);
    if (meant === undefined) return [];
    const column = line.indexOf(name);
    const point = (by: number) => ({ line: index + 1, column: column + by + 1, offset: at + column + by });
    const place = { start: point(0), end: point(name.length) };
    const words = `There is no block \`${name}\`, so nothing in it is read. Write \`${meant}\``;
    return told('annotation', 'error', settings, { text: words, actual: name, expected: [meant], place });
  });
}
