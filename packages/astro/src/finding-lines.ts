import type { CheckedPost } from '@retare/check';

type Message = CheckedPost['file']['messages'][number];

/**
 * Findings for a build log, two lines each: where, so that an editor can open it, and what. Errors come last, next to the sum.
 *
 * @returns Empty where there are none.
 */
export function findingLines(checked: readonly CheckedPost[]): string {
  const all = checked.flatMap(({ file }) => file.messages.map((message) => ({ path: file.path, message })));
  const [warnings, errors] = [false, true].map((fatal) =>
    all.filter(({ message }) => (message.fatal === true) === fatal),
  );
  return [...(warnings ?? []), ...(errors ?? [])].map(({ path, message }) => finding(path, message)).join('\n');
}

function finding(path: string, message: Message): string {
  const { line, column, fatal, ruleId = '', reason } = message;
  const { kitchen } = message as { kitchen?: string | null };
  const place = line === undefined ? path : `${path}:${line}:${column ?? 1}`;
  const where = kitchen == null ? '' : ` (${kitchen})`;
  return `${place} ${fatal === true ? 'error' : 'warning'} ${ruleId}${where}\n  ${reason}`;
}
