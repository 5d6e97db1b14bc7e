import type { RuleName, Settings, Severity } from '@retare/larder';

/**
 * How much a finding counts: by the site's settings, else by its rule. What conversion gives in another kitchen is a warning, unless
 * that kitchen must hold.
 *
 * @param converted Kitchen id of a converted version; null for what an author wrote.
 */
export function severityOf(rule: RuleName, own: Severity, converted: string | null, settings: Settings): Severity {
  const severity = settings.severity[rule] ?? own;
  if (severity !== 'error' || converted === null || settings.mustHold.includes(converted)) return severity;
  return 'warning';
}
