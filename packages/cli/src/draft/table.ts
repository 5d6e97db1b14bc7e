/**
 * Rows as columns of text, each as wide as its widest cell.
 *
 * @param head Names of the columns.
 */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((name, at) => Math.max(name.length, ...rows.map((row) => row[at]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    widths
      .map((width, at) => (cells[at] ?? '').padEnd(width))
      .join('  ')
      .trimEnd();
  return [head, widths.map((width) => '-'.repeat(width)), ...rows].map(line).join('\n');
}
