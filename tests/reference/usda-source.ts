/** A value's source in the USDA table: `USDA SR26 16073, cup`, or that of a like food, `as cheddar: USDA SR26 01009, cup, diced`. */
export interface UsdaSource {
  ndb: string;
  measure: string;
}

const usda = /^(?:as [^:]+: )?USDA SR26 (\d{5}), (.+)$/;

/** Reads a source that names one row of the USDA table; null if it names none. */
export function usdaSource(source: string): UsdaSource | null {
  const match = usda.exec(source);
  return match === null ? null : { ndb: match[1] ?? '', measure: match[2] ?? '' };
}
