import { type CheckedPost, type JsonFinding, jsonReport } from '@retare/check';

/**
 * Findings for a build log, two lines each: where, so that an editor can open it, and what. Errors come last, next to the sum.
 *
 * @returns Empty where there are none.
 */
export function findingLines(checked: readonly CheckedPost[]): string {
  const all = jsonReport(checked);
  const [warnings, errors] = (['warning', 'error'] as const).map((kind) =>
    all.filter(({ severity }) => severity === kind),
  );
  return [...(warnings ?? []), ...(errors ?? [])].map(lines).join('\n');
}

function lines({ file, line, column, severity, rule, kitchens, message }: JsonFinding): string {
  const place = line === null ? file : `${file}:${line}:${column ?? 1}`;
  const where = kitchens.length === 0 ? '' : ` (${kitchens.join(', ')})`;
  return `${place} ${severity} ${rule}${where}\n  ${message}`;
}
