import { Exact } from '../../exact.js';

const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/**
 * The value of a one-sign fraction such as `½`.
 *
 * @returns The exact value (a third to 40 digits), or `null` for any other sign.
 */
export function vulgarFraction(sign: string): Exact | null {
  const parts = Object.hasOwn(vulgar, sign) ? vulgar[sign] : undefined;
  return parts === undefined ? null : new Exact(parts[0]).div(parts[1]);
}

/** Whether a sign divides two numbers: `/`, the fraction slash U+2044 or the division slash U+2215. */
export function isSlash(sign: string): boolean {
  return sign === '/' || sign === '\u2044' || sign === '\u2215';
}
