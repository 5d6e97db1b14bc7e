import {
  dimensionOf,
  foodsIn,
  type Kitchen,
  linesIn,
  type Version,
  type VersionFood,
  type VersionLine,
} from '@retare/core';

/**
 * Whether nobody knows if an amount of a food that the larder does not have can be measured, or bought. Pieces need no measuring, and a
 * scale weighs anything; how a cook there measures a volume of it depends on what it is.
 */
export function isInDoubt(
  { food, stated }: VersionFood,
  rule: 'unmeasurable' | 'unbuyable',
  kitchen: Kitchen,
): boolean {
  if (food !== null) return false;
  const unit = stated?.statements[0]?.[0]?.unit;
  if (rule === 'unbuyable' || unit === undefined) return true;
  const dimension = dimensionOf(unit);
  return dimension === 'volume' || (dimension === 'mass' && kitchen.scale === null);
}

/** Lines of a version that nobody has checked, since the larder does not know their food. */
export function linesInDoubt({ parts }: Version): VersionLine[] {
  return parts.flatMap(({ lines }) =>
    lines.filter(
      (line) =>
        line.line.reading.kind !== 'not-an-ingredient' &&
        linesIn(line)
          .flatMap(foodsIn)
          .some(({ food }) => food === null),
    ),
  );
}
