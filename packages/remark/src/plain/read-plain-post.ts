import { type Food, findFoodOfLine, type Kitchen, type Line, lineOfText, readLine, readMentions } from '@retare/core';
import type { Larder } from '@retare/larder';
import type { Root } from 'mdast';
import { guessKitchen, type KitchenGuess } from './guess-kitchen.js';
import { makesIn } from './makes-in.js';
import { type PlainLine, plainLines } from './plain-lines.js';

/** A post without annotations, as it was understood. */
export interface PlainPost {
  guess: KitchenGuess;
  makes: string | null;
  /** Ingredient lines with where they stand. */
  lines: (PlainLine & { read: Line })[];
}

/**
 * Reads a post that carries no annotations.
 *
 * @param kitchens Kitchens that it may have been written in: of several the one is guessed.
 */
export function readPlainPost(
  tree: Root,
  source: string,
  larder: Larder,
  kitchens: ReadonlyMap<string, Kitchen>,
): PlainPost {
  const found = plainLines(tree, source);
  const first = found.map(({ text }) => {
    const reading = readLine(text);
    return { reading, food: foodIn(reading, larder, 'us') };
  });
  const degrees = source
    .split(/\r?\n/)
    .flatMap((line) =>
      readMentions(line).flatMap(({ unit, impliedUnit }) =>
        impliedUnit || (unit !== 'C' && unit !== 'F') ? [] : [unit],
      ),
    );
  const guess = guessKitchen(first, degrees, kitchens);
  const own: Kitchen | undefined = larder.kitchens.get(guess.kitchen);
  const lines = found.map((line, index) => {
    const key = `line-${index + 1}`;
    if (own !== undefined) return { ...line, read: lineOfText(line.text, key, own, larder.foods) };
    const reading = readLine(line.text);
    const named = findFoodOfLine(reading, larder.foods, guess.kitchen);
    const read = { key, text: line.text, reading, food: named?.food ?? null, name: named?.name ?? null };
    return { ...line, read };
  });
  return { guess, makes: makesIn(source), lines };
}

function foodIn(reading: Line['reading'], larder: Larder, kitchen: string): Food | null {
  return findFoodOfLine(reading, larder.foods, kitchen)?.food ?? null;
}
