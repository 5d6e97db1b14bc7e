/** A value's source in the USDA table: `USDA SR26 16073, cup`. */
export interface UsdaSource {
  ndb: string;
  measure: string;
}

const usda = /^USDA SR26 (\d{5}), (.+)$/;

/** Reads a source that names one row of the USDA table; null if it names none. */
export function usdaSource(source: string): UsdaSource | null {
  const match = usda.exec(source);
  return match === null ? null : { ndb: match[1] ?? '', measure: match[2] ?? '' };
}
