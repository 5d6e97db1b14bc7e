import type { VFile } from 'vfile';
import type { CheckedPost } from './check-post.js';

/** The sum of a check. */
export interface Summary {
  posts: number;
  amounts: number;
  kitchens: number;
  errors: number;
  warnings: number;
}

/** Adds up checked posts; those without annotations do not count. */
export function summarise(checked: readonly CheckedPost[], kitchens: number): Summary {
  const messages = checked.flatMap(({ file }) => file.messages);
  return {
    posts: checked.filter(({ isRecipe }) => isRecipe).length,
    amounts: checked.reduce((sum, { amounts }) => sum + amounts, 0),
    kitchens,
    errors: messages.filter(({ fatal }) => fatal === true).length,
    warnings: messages.filter(({ fatal }) => fatal !== true).length,
  };
}

/** `14 posts, 212 amounts, 5 kitchens: 0 errors, 3 warnings` */
export function summaryLine({ posts, amounts, kitchens, errors, warnings }: Summary): string {
  const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;
  const read = [counted(posts, 'post'), counted(amounts, 'amount'), counted(kitchens, 'kitchen')].join(', ');
  return `${read}: ${counted(errors, 'error')}, ${counted(warnings, 'warning')}`;
}

/** Findings as lines of text, by file; nothing for files without any. */
export function textReport(checked: readonly CheckedPost[], color: boolean): string {
  const painted = color ? paint : plain;
  return checked
    .filter(({ file }) => file.messages.length > 0)
    .map(({ file }) =>
      [painted(file.path, 'heading'), ...file.messages.map((each) => textLine(each, painted))].join('\n'),
    )
    .join('\n\n');
}

/** `  14:3 error   UK shops sell … Write \`1 tin\` (unbuyable)` */
function textLine({ line, column, fatal, reason, ruleId }: VFile['messages'][number], painted: typeof paint): string {
  const place = line === undefined ? 'file' : `${line}:${column}`;
  const severity = fatal === true ? painted('error  ', 'error') : painted('warning', 'warning');
  return `  ${place.padEnd(6)} ${severity} ${reason} ${painted(`(${ruleId})`, 'aside')}`;
}

/** SGR codes, ECMA-48 8.3.117: begin and end. */
const codes = { heading: [4, 24], error: [31, 39], warning: [33, 39], aside: [2, 22] } as const;

function paint(text: string, as: keyof typeof codes): string {
  const [begin, end] = codes[as];
  return `\u001b[${begin}m${text}\u001b[${end}m`;
}

function plain(text: string): string {
  return text;
}

/** One finding for a tool. */
export interface JsonFinding {
  file: string;
  line: number | null;
  column: number | null;
  endLine: number | null;
  endColumn: number | null;
  rule: string;
  severity: 'error' | 'warning';
  /** Whose cooks meet it; none for a finding about the text itself. */
  kitchens: string[];
  message: string;
  actual: string | null;
  expected: string[];
  note: string | null;
}

/** Findings as data. */
export function jsonReport(checked: readonly CheckedPost[]): JsonFinding[] {
  return checked.flatMap(({ file }) => file.messages.map((message) => jsonFinding(file, message)));
}

function jsonFinding(file: VFile, message: VFile['messages'][number]): JsonFinding {
  const { line = null, column = null, place } = message;
  const end = place !== undefined && 'end' in place ? place.end : undefined;
  const extra = message as { kitchens?: string[] };
  return {
    file: file.path,
    line,
    column,
    endLine: end?.line ?? null,
    endColumn: end?.column ?? null,
    rule: message.ruleId ?? '',
    severity: message.fatal === true ? 'error' : 'warning',
    kitchens: extra.kitchens ?? [],
    message: message.reason,
    actual: message.actual ?? null,
    expected: message.expected ?? [],
    note: message.note ?? null,
  };
}
