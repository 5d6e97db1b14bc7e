import { amountAsWritten, type Line, linesFor, type Mention, oversizing, withPlus } from '@retare/core';
import type { Fault } from './fault.js';
import type { ReadingContext, RecipeReading } from './reading.js';
import { placeOf } from './words-of.js';

/**
 * Shares that are more than the ingredient lines of their kitchen list.
 *
 * @param reading With all its blocks read.
 */
export function oversizedShares(reading: RecipeReading, context: ReadingContext): Fault[] {
  const { steps } = reading.recipe;
  return steps.flatMap(({ native, authored }) =>
    [native, ...authored].flatMap((method) => {
      const lines = withPlus(linesFor(reading.recipe, method.kitchen));
      const kitchen = context.kitchens.get(method.kitchen);
      if (kitchen === undefined || lines.length === 0) return [];
      const oversized = oversizing(lines, kitchen, context.foods);
      return method.mentions.flatMap((mention) => {
        const line = mention.kind === 'amount' ? oversized(mention) : null;
        return line === null ? [] : [faultOf(mention, line, reading)];
      });
    }),
  );
}

function faultOf({ key, text }: Mention, line: Line, { mentions, source }: RecipeReading): Fault {
  const whole = amountAsWritten(line.reading) ?? line.text;
  const found = mentions.get(key);
  const place =
    found === undefined ? undefined : placeOf(found.words, 0, found.words.text.length, source, found.node.position);
  return {
    actual: text,
    expected: [whole],
    message: `\`${text}\` is more than the \`${whole}\` of ${line.reading.food?.text ?? line.text} that is listed, so it is no share of it. Write at most that, or list more`,
    place,
  };
}
