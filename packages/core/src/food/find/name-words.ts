import { nameKey } from './name-key.js';

/** A word of a food's name as it is looked up, and its place in the text. */
export interface NameWord {
  text: string;
  start: number;
  end: number;
}

const letter = /[\p{L}\p{N}\p{M}]/u;

/** The words of a text; a slash is one, other signs part them. */
export function nameWords(text: string): NameWord[] {
  const words: NameWord[] = [];
  let start = -1;
  for (let at = 0; at <= text.length; at += 1) {
    const isWord = at < text.length && isWordUnit(text, at);
    if (isWord && start < 0) start = at;
    if (isWord || start < 0) {
      if (text[at] === '/') words.push({ text: '/', start: at, end: at + 1 });
      continue;
    }
    words.push({ text: nameKey(text.slice(start, at)), start, end: at });
    start = -1;
    if (text[at] === '/') words.push({ text: '/', start: at, end: at + 1 });
  }
  return words;
}

/** Small letters, capitals and digits are told by their code: a pattern for every sign would be the slowest part. */
function isWordUnit(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) {
    const isDigit = code >= 48 && code <= 57;
    return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || isDigit || code === 37 || code === 39;
  }
  return text[at] === '’' || letter.test(text[at] ?? '');
}
