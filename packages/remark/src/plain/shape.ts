import { type LineReading, readLine } from '@retare/core';

/** How a list looks. */
export interface Shape {
  /** Share of its items that state an amount. */
  amounts: number;
  /** Share of its items that read as steps: long, or a sentence. */
  steps: number;
  items: number;
}

const longStep = 14;

/** The shape of a list of lines, by what each reads as. */
export function shapeOf(lines: readonly string[]): Shape {
  const readings = lines.map((line) => readLine(line));
  const share = (test: (reading: LineReading, line: string) => boolean): number =>
    lines.length === 0
      ? 0
      : readings.filter((reading, index) => test(reading, lines[index] ?? '')).length / lines.length;
  return {
    amounts: share(({ amounts }) => amounts.length > 0),
    steps: share(
      ({ kind, amounts }, line) => kind === 'not-an-ingredient' || (amounts.length === 0 && isSentence(line)),
    ),
    items: lines.length,
  };
}

/** A remark in brackets makes no sentence of a food. */
function isSentence(line: string): boolean {
  const bare = line.replace(/\([^()]*\)?/g, '').trim();
  const words = bare.split(/\s+/).length;
  return words >= longStep || (words >= 6 && /[.!]$/.test(bare));
}

/** A list that nobody has named: foods with amounts, or short names of foods. */
export function looksLikeIngredients({ amounts, steps, items }: Shape): boolean {
  if (items === 0 || steps > 0.5) return false;
  return amounts >= 0.3 || (steps === 0 && items >= 2);
}
