import { anchorLine, type Line, near, oneOf } from '@retare/core';
import type { ContainerDirective } from 'mdast-util-directive';
import { attributePlace } from './attribute-place.js';
import type { Fault } from './fault.js';
import type { RecipeReading } from './reading.js';

/** What is wrong with an anchor that no line with an amount is called; null where one is, or where there are no lines. */
export function unlistedAnchor(anchor: string, { recipe }: RecipeReading): Omit<Fault, 'place'> | null {
  const lines = recipe.parts.flatMap(({ native }) => native.lines);
  if (lines.length === 0 || anchorLine(anchor, lines) !== null) return null;
  const names = [...new Set(lines.flatMap(nameOf))];
  const meant = near(anchor, names);
  const expected = meant === undefined ? names : [meant];
  const write = expected.length === 0 ? 'Name a food with an amount' : `Write ${oneOf(expected)}`;
  return {
    actual: anchor,
    expected,
    message: `No ingredient line with an amount is called \`${anchor}\`, so it cannot be the anchor. ${write}`,
  };
}

function nameOf({ reading }: Line): string[] {
  return reading.amounts.length === 0 || reading.food === null ? [] : [reading.food.text];
}

/** Anchors of native blocks that no line is called. */
export function unlistedAnchors(
  blocks: readonly { node: ContainerDirective; anchor: string }[],
  reading: RecipeReading,
): Fault[] {
  return blocks.flatMap(({ node, anchor }): Fault[] => {
    const fault = unlistedAnchor(anchor, reading);
    if (fault === null) return [];
    const place = attributePlace(node, 'anchor', reading.source);
    return [{ ...fault, place: place?.value ?? place?.whole ?? node.position }];
  });
}
