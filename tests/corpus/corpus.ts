import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** An amount as labelled by hand. */
export interface LabelledAmount {
  low: string;
  high: string | null;
  unit: string;
  approx: boolean;
}

/** An ingredient line as labelled by hand. */
export interface LineLabel {
  file: string;
  line: number;
  text: string;
  kind: 'amount' | 'no-amount' | 'not-an-ingredient';
  amounts: LabelledAmount[];
  pack: { count: string; size: string; unit: string; word: string } | null;
  food: string;
  prep: string;
  optional: boolean;
  ambiguous: boolean;
  strata: string[];
}

/** A temperature, pan or length outside the ingredient lines, as labelled by hand. */
export interface MentionLabel {
  file: string;
  line: number;
  text: string;
  kind: 'oven' | 'core' | 'temp' | 'pan' | 'length';
  low: string;
  high: string | null;
  unit: string;
  impliedUnit: boolean;
  ambiguous: boolean;
}

/** Where the collection of real recipes lies: `RETARE_CORPUS`, or a folder beside the repository. */
export function corpusFolder(): string {
  return process.env.RETARE_CORPUS ?? fileURLToPath(new URL('../../../shared/corpus', import.meta.url));
}

/** Whether the collection is there. */
export function hasCorpus(): boolean {
  return existsSync(`${corpusFolder()}/labels.jsonl`);
}

function records<T>(name: string): T[] {
  const lines = readFileSync(`${corpusFolder()}/${name}`, 'utf8').split('\n');
  return lines.filter((line) => line.trim() !== '').map((line) => JSON.parse(line) as T);
}

/** The labelled ingredient lines. */
export function lineLabels(): LineLabel[] {
  return records<LineLabel>('labels.jsonl');
}

/** The labelled mentions. */
export function mentionLabels(): MentionLabel[] {
  return records<MentionLabel>('temperatures.jsonl');
}

/** The lines of a recipe of the collection, without line ends. */
export function recipeLines(file: string): string[] {
  const folder = ['a', 'b'].find((part) => existsSync(`${corpusFolder()}/${part}/${file}`));
  if (folder === undefined) throw new Error(`${file} is not in the collection`);
  return readFileSync(`${corpusFolder()}/${folder}/${file}`, 'utf8').split(/\r?\n/u);
}

/** A list line without indent, marker and line end; a task box is left, since the reader passes over it. */
export function withoutMarker(line: string): string {
  return line.replace(/^\s*(?:[-*+]|\d{1,3}[.)])\s+/u, '').trimEnd();
}
