import { lineCalled, type Mention, near, oneOf, withPlus } from '@retare/core';
import { attributePlace } from './attribute-place.js';
import type { Fault } from './fault.js';
import type { RecipeReading } from './reading.js';

/**
 * Shares of something that no ingredient line lists and the larder does not know: a slip in `of`, whose amount would follow nothing.
 *
 * @param reading With all its blocks read.
 */
export function unlistedShares(reading: RecipeReading): Fault[] {
  const { parts, steps } = reading.recipe;
  const lines = parts
    .flatMap(({ native, authored }) => [native, ...authored])
    .flatMap((block) => withPlus(block.lines));
  if (lines.every((line) => line.reading.food === null)) return [];
  const names = [...new Set(lines.flatMap((line) => line.reading.food?.text ?? []))];
  const listed = new Set(names.map((name) => name.toLowerCase()));
  const short = lineCalled(lines);
  const mentions = steps.flatMap(({ native, authored }) => [native, ...authored]).flatMap((method) => method.mentions);
  return mentions.flatMap((mention) => {
    const of = unknownFoodOf(mention);
    return of === null || listed.has(of.toLowerCase()) || short(of) !== null
      ? []
      : [faultOf(mention, of, names, reading)];
  });
}

function unknownFoodOf(mention: Mention): string | null {
  return mention.kind === 'amount' && mention.food === null ? mention.of : null;
}

function faultOf({ key }: Mention, of: string, names: readonly string[], { mentions, source }: RecipeReading): Fault {
  const meant = near(of, names);
  // What has been mixed is no line's food, and its amount is converted all the same.
  const elsewise = meant === undefined ? ', or leave out `of` where it is a mixture' : '';
  const expected = meant === undefined ? [...names] : [meant];
  const node = mentions.get(key)?.node;
  const place = node === undefined ? null : attributePlace(node, 'of', source);
  return {
    actual: of,
    expected,
    message: `No ingredient line lists \`${of}\`. Write ${oneOf(expected)}${elsewise}`,
    place: place?.value ?? place?.whole ?? node?.position,
  };
}
