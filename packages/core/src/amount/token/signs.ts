/** Kinds of characters, by code point. The tables below spare a regular expression for each ASCII character. */
const asciiLetter = new Uint8Array(128);
for (let code = 65; code <= 90; code += 1) asciiLetter[code] = 1;
for (let code = 97; code <= 122; code += 1) asciiLetter[code] = 1;

const lastAscii = 127;

/** UTF-16 length of the character that begins at an offset; 0 at the end. */
export function signLength(text: string, at: number): number {
  if (at >= text.length) return 0;
  const code = text.charCodeAt(at);
  const isPair = code >= 0xd800 && code <= 0xdbff && at + 1 < text.length;
  return isPair && text.charCodeAt(at + 1) >= 0xdc00 && text.charCodeAt(at + 1) <= 0xdfff ? 2 : 1;
}

/** Whether a blank (no-break, thin and zero-width ones too) stands at an offset. */
export function isBlankAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code <= lastAscii) return code === 32 || (code >= 9 && code <= 13);
  return /^[\s\u200b\u2060\ufeff]$/u.test(text[at] ?? '');
}

/** Whether a letter, or a mark that belongs to one, stands at an offset. */
export function isLetterAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code <= lastAscii) return asciiLetter[code] === 1;
  // º and ª are letters to Unicode; º stands for the degree sign.
  if (Number.isNaN(code) || code === 0xba || code === 0xaa) return false;
  return /^[\p{L}\p{M}]$/u.test(text.slice(at, at + signLength(text, at)));
}

/** Whether an ASCII or full-width digit stands at an offset. */
export function isDigitAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return (code >= 48 && code <= 57) || (code >= 0xff10 && code <= 0xff19);
}

/** Lower case, compatibility forms folded, straight apostrophes. */
export function folded(word: string): string {
  if (isAscii(word)) return word.toLowerCase();
  return word.normalize('NFKC').toLowerCase().replaceAll('’', "'");
}

function isAscii(word: string): boolean {
  for (let at = 0; at < word.length; at += 1) if (word.charCodeAt(at) > lastAscii) return false;
  return true;
}
