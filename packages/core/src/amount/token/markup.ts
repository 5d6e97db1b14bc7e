const firstPicture = '\u200d';
const pictures = /[\p{Extended_Pictographic}\p{Emoji_Modifier}\p{Regional_Indicator}]|\u{200d}|\u{20e3}|\u{fe0f}/u;

/** UTF-16 units of a picture at an offset, 0 where none stands; a cross multiplies, and is none. */
function pictureLength(text: string, at: number): number {
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0);
  return pictures.test(sign) && sign !== '✖' && sign !== '™' ? sign.length : 0;
}

/**
 * Marks the characters of a line that are no words: pictures, and the Markdown, which is emphasis signs, back-ticks, and the
 * brackets and address of a link.
 * A line whose Markdown is already taken off has none. One pass, no backtracking.
 *
 * @returns One byte for each UTF-16 unit, 1 where it is mark-up.
 */
export function markupMask(text: string): Uint8Array {
  const mask = new Uint8Array(text.length);
  const openBrackets: number[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (sign !== undefined && sign >= firstPicture) {
      const length = pictureLength(text, at);
      mask.fill(1, at, at + length);
      at += Math.max(0, length - 1);
    } else if (sign === '*' || sign === '`') mask[at] = 1;
    else if (sign === '_' && !(isWordSign(text[at - 1]) && isWordSign(text[at + 1]))) mask[at] = 1;
    else if (sign === '[') openBrackets.push(at);
    else if (sign === ']') {
      const opened = openBrackets.pop();
      if (opened === undefined || text[at + 1] !== '(') continue;
      const end = addressEnd(text, at + 2);
      if (end < 0) continue;
      mask[opened] = 1;
      mask.fill(1, at, end);
      at = end - 1;
    }
  }
  return mask;
}

function isWordSign(sign: string | undefined): boolean {
  return sign !== undefined && /[\p{L}\p{N}]/u.test(sign);
}

/** Where a link's address ends, or -1. An address longer than this is no address: it keeps the reading linear. */
const longestAddress = 2000;

function addressEnd(text: string, from: number): number {
  const stop = Math.min(text.length, from + longestAddress);
  for (let at = from; at < stop; at += 1) {
    const sign = text[at];
    if (sign === ')') return at + 1;
    if (sign === ' ' || sign === '\n' || sign === '(' || sign === '[') return -1;
  }
  return -1;
}
