import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from 'yaml';
import { type Fault, inOrder, type KeyPath, type Problem } from './problem.js';

/** A YAML text as data, with the way back from a key to its place. */
export interface YamlReading {
  /** Plain data; undefined if the text is no YAML. */
  value: unknown;
  /** What the YAML syntax itself has against the text. */
  problems: Problem[];
  /** Gives a fault its place: the value at its path, else the nearest key above that is there. */
  locate(fault: Fault): Problem;
  /** The same for several, in the order of their places. */
  locateAll(faults: readonly Fault[]): Problem[];
}

/** Reads a YAML text. Never throws on bad text: its problems say what is wrong. */
export function readYaml(text: string, path: string): YamlReading {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, logLevel: 'silent' });
  const problemAt = (offset: number, key: string, message: string, allowed?: readonly string[]): Problem => {
    const { line, col } = lines.linePos(offset);
    return { path, line: Math.max(line, 1), column: Math.max(col, 1), key, message, ...(allowed && { allowed }) };
  };
  const problems = document.errors.map((error) =>
    problemAt(error.pos[0], '', `This cannot be read as YAML: ${sentence(error.message)}`),
  );
  let value: unknown;
  if (problems.length === 0) {
    keepLongNumbers(document);
    try {
      value = document.toJS();
    } catch (error) {
      // An alias without its anchor, or aliases that multiply without end.
      problems.push(problemAt(0, '', `This cannot be read as YAML: ${sentence(String((error as Error).message))}`));
    }
  }
  const locate = ({ path: keys, message, allowed, on = 'value' }: Fault) =>
    problemAt(offsetAt(document, keys, on), keys.join('.'), message, allowed);
  return { value, problems, locate, locateAll: (faults) => inOrder(faults.map(locate)) };
}

/** Past 15 digits a float would not hold the number: leave its text for the exact reader. */
function keepLongNumbers(document: Document): void {
  visit(document, {
    Scalar(_, node) {
      if (typeof node.value === 'number' && node.source !== undefined && node.source.length > 15)
        node.value = node.source;
    },
  });
}

function offsetAt(document: Document, path: KeyPath, on: 'key' | 'value'): number {
  let node: Node | null = document.contents as Node | null;
  let offset = node?.range?.[0] ?? 0;
  for (const [depth, key] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document) ?? null;
    if (isSeq(node)) {
      node = (node.items[Number(key)] as Node | undefined) ?? null;
      offset = node?.range?.[0] ?? offset;
      continue;
    }
    const pair: Pair | undefined = isMap(node) ? node.items.find((item) => keyOf(item) === String(key)) : undefined;
    if (pair === undefined) break;
    const last = depth === path.length - 1;
    const keyOffset = (pair.key as Node).range?.[0] ?? offset;
    node = pair.value as Node | null;
    offset = last && on === 'value' ? (valueOffset(node) ?? keyOffset) : keyOffset;
  }
  return offset;
}

/** A key with nothing behind it has an empty value past its line: point at the key instead. */
function valueOffset(node: Node | null): number | undefined {
  const range = node?.range;
  if (!range || range[0] === range[1]) return undefined;
  return range[0];
}

const keyOf = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.value) : '');

const sentence = (message: string): string => message.split('\n')[0]?.replace(/:$/, '') ?? message;
