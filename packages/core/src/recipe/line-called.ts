import { singularKey } from '../food/find/name-key.js';
import { nameWords } from '../food/find/name-words.js';
import type { Line } from './recipe.js';

/** A food's name has no more words than this behind one of its own. */
const mostWords = 6;

/**
 * Finds the line whose food is called so for short: `sausages` for `pork sausages`, where no other line has such a name.
 *
 * @returns For a name the line, the first of those that are called the same; null where there is none, or names that differ.
 */
export function lineCalled(lines: readonly Line[]): (name: string) => Line | null {
  const byEnd = new Map<string, { line: Line; whole: string } | null>();
  for (const line of lines) {
    const words = nameWords(line.reading.food?.text ?? '');
    const whole = keyOf(words);
    for (let from = Math.max(1, words.length - mostWords); from < words.length; from += 1) {
      const end = keyOf(words.slice(from));
      const other = byEnd.get(end);
      if (other === undefined) byEnd.set(end, { line, whole });
      else if (other !== null && other.whole !== whole) byEnd.set(end, null);
    }
  }
  return (name) => byEnd.get(keyOf(nameWords(name)))?.line ?? null;
}

function keyOf(words: readonly { text: string }[]): string {
  return singularKey(words.map(({ text }) => text).join(' '));
}
