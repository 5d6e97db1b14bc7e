/** A file's top block, with keys that have nothing behind them left out: an empty file or key asks for the defaults. */
export function withoutEmptyKeys(value: unknown): unknown {
  if (value === null || value === undefined) return {};
  if (typeof value !== 'object' || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== null));
}
