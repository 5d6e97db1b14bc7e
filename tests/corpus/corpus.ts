import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readLine } from '@retare/core';

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

/** A line of a recipe with its place. */
export interface PlacedLine {
  file: string;
  line: number;
  text: string;
}

/**
 * All lines that are no ingredient lines: bullets under a heading for ingredients are left out, and in a recipe without one the
 * bullets of its first list that say no step.
 */
export function methodLines(): PlacedLine[] {
  const kinds = new Map(lineLabels().map(({ file, line, kind }) => [`${file}:${line}`, kind]));
  return ['a', 'b'].flatMap((part) => {
    const files = readdirSync(`${corpusFolder()}/${part}`).filter((name) => name.endsWith('.md'));
    return files.flatMap((file) => {
      const texts = recipeLines(file);
      const headed = texts.some((text) => ingredientHeading.test(text));
      const lists = headed ? headedLists(texts) : firstList(texts);
      return texts.flatMap((text, index) => {
        const kind = kinds.get(`${file}:${index + 1}`) ?? readLine(withoutMarker(text)).kind;
        const isIngredient = lists.has(index) && (headed || kind !== 'not-an-ingredient');
        return isIngredient ? [] : [{ file, line: index + 1, text }];
      });
    });
  });
}

const ingredientHeading = /^#+ .*ingredient/iu;
const bullet = /^\s*[-*+] /u;

/** Indexes of the bullets under a heading for ingredients and the deeper headings below it. */
function headedLists(texts: readonly string[]): Set<number> {
  const found = new Set<number>();
  let depth = 0;
  texts.forEach((text, index) => {
    const level = /^(#+) /u.exec(text)?.[1]?.length ?? 0;
    if (ingredientHeading.test(text)) depth = level;
    else if (level > 0 && level <= depth) depth = 0;
    else if (depth > 0 && bullet.test(text)) found.add(index);
  });
  return found;
}

/** Indexes of the bullets before running text begins. */
function firstList(texts: readonly string[]): Set<number> {
  const first = texts.findIndex((text) => bullet.test(text));
  const end = texts.findIndex((text, index) => index > first && !bullet.test(text) && /^\S/u.test(text));
  const found = new Set<number>();
  texts.forEach((text, index) => {
    if (bullet.test(text) && index >= first && (end < 0 || index < end)) found.add(index);
  });
  return found;
}
