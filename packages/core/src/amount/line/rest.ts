import type { Token, Tokens } from '../token/token.js';

const joints = new Set([',', ';', '(', ')', '[', ']', ':', '|']);

/**
 * What is left of a line when amount, food and words for optional are taken away, in parts joined by `; `.
 *
 * @param use 0 for a token that nothing has used.
 */
export function restOf(tokens: Tokens, use: Uint8Array): string {
  const parts: string[] = [];
  let part = '';
  let before: Token | null = null;
  const close = (): void => {
    const trimmed = trimmedOf(part);
    if (trimmed !== '') parts.push(trimmed);
    part = '';
    before = null;
  };
  tokens.list.forEach((token, index) => {
    const free = use[index] === 0;
    if (!free || (token.kind === 'mark' && joints.has(token.lower))) close();
    else {
      const apart = before !== null && (token.gap || before.end < token.start - 1);
      part += apart ? ` ${token.text}` : token.text;
      before = token;
    }
  });
  close();
  return parts.filter((text) => text !== 'of').join('; ');
}

const edges = new Set(['.', '-', '–', '—']);

/** Without the blanks, stops and dashes at either end. A pattern for the end of a long run would be tried at each of its places. */
function trimmedOf(part: string): string {
  let start = 0;
  let end = part.length;
  while (start < end && isEdge(part[start] ?? '')) start += 1;
  while (end > start && isEdge(part[end - 1] ?? '')) end -= 1;
  return part.slice(start, end);
}

function isEdge(letter: string): boolean {
  return edges.has(letter) || letter.trim() === '';
}
