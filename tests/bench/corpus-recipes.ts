import { readdirSync, readFileSync } from 'node:fs';
import {
  type Ingredients,
  isLengthUnit,
  type Kitchen,
  type Line,
  lineOfText,
  type Mention,
  type Part,
  type Recipe,
  readLine,
  readMentions,
  readPan,
} from '@retare/core';
import type { Larder } from '@retare/larder';
import type { Heading, List, Root, RootContent } from 'mdast';
import { toString as wordsIn } from 'mdast-util-to-string';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { corpusFolder } from '../corpus/corpus.ts';

/** A recipe of the collection with all its lines read. */
export interface CorpusRecipe {
  file: string;
  recipe: Recipe;
}

/** What the collection holds. */
export interface CorpusReading {
  /** Every line read without doubt, every food known. */
  recipes: CorpusRecipe[];
  /** Recipes with a list of ingredients of which a line could not be read or a food is not known. */
  notFullyRead: number;
  /** Posts in which no list reads as ingredients. */
  withoutList: number;
}

const parser = unified().use(remarkParse).use(remarkFrontmatter);

/** Every recipe of the collection whose lines are fully read; plain posts, so the list is found by its heading or by its items. */
export function corpusRecipes(larder: Larder): CorpusReading {
  const reading: CorpusReading = { recipes: [], notFullyRead: 0, withoutList: 0 };
  for (const folder of ['a', 'b']) {
    for (const file of readdirSync(`${corpusFolder()}/${folder}`)
      .filter((name) => name.endsWith('.md'))
      .sort()) {
      const recipe = readPost(readFileSync(`${corpusFolder()}/${folder}/${file}`, 'utf8'), larder);
      if (recipe === null) reading.withoutList += 1;
      else if (!isFullyRead(recipe)) reading.notFullyRead += 1;
      else reading.recipes.push({ file, recipe });
    }
  }
  return reading;
}

function isFullyRead({ parts }: Recipe): boolean {
  return parts.every(({ native }) =>
    native.lines.every(({ reading, food }) => reading.doubt === null && food !== null),
  );
}

/** A list of ingredients with the words above it. */
interface Listed {
  label: string | null;
  items: string[];
}

function readPost(text: string, larder: Larder): Recipe | null {
  const tree = parser.parse(text);
  const lists = headed(tree) ?? firstReadable(tree);
  if (lists.length === 0) return null;
  const kitchen = larder.kitchens.get(isMetric(lists) ? 'eu' : 'us');
  if (kitchen === undefined) throw new Error('no such kitchen');
  const parts = lists
    .map((list, index) => partOf(list, index, kitchen, larder))
    .filter(({ native }) => native.lines.length > 0);
  if (parts.length === 0) return null;
  const taken = new Set(lists.flatMap(({ items }) => items));
  return {
    kitchen: kitchen.id,
    makes: null,
    anchor: null,
    preserve: null,
    parts,
    steps: [{ native: methodOf(tree, kitchen, taken), authored: [] }],
  };
}

/** The lists under a heading for ingredients, and under the deeper ones below it. */
function headed({ children }: Root): Listed[] | null {
  const start = children.findIndex((node) => node.type === 'heading' && /ingredient/i.test(wordsIn(node)));
  if (start < 0) return null;
  const depth = (children[start] as Heading).depth;
  const found: Listed[] = [];
  let label: string | null = null;
  for (const node of children.slice(start + 1)) {
    if (node.type === 'heading' && node.depth <= depth) break;
    if (node.type === 'heading' || node.type === 'paragraph') label = wordsIn(node);
    if (node.type === 'list') found.push({ label, items: itemsOf(node) });
  }
  return found.length === 0 ? null : found;
}

/** The first list whose items mostly read as amounts, with those of its kind that follow before any other list. */
function firstReadable({ children }: Root): Listed[] {
  const found: Listed[] = [];
  let label: string | null = null;
  for (const node of children) {
    if (node.type === 'heading' || node.type === 'paragraph') label = wordsIn(node);
    if (node.type !== 'list') continue;
    const items = itemsOf(node);
    const amounts = items.filter((item) => readLine(item).kind === 'amount').length;
    if (node.ordered !== true && amounts * 2 > items.length) found.push({ label, items });
    else if (found.length > 0) break;
  }
  return found;
}

function itemsOf({ children }: List): string[] {
  return children.flatMap((item) => {
    const paragraph = item.children.find((child) => child.type === 'paragraph');
    const inner = item.children.flatMap((child) => (child.type === 'list' ? itemsOf(child) : []));
    return [...(paragraph === undefined ? [] : [wordsIn(paragraph)]), ...inner];
  });
}

/** Grams and millilitres in most of the lines that have a weight or a cup. */
function isMetric(lists: readonly Listed[]): boolean {
  const units = lists.flatMap(({ items }) => items.flatMap((item) => readLine(item).amounts[0]?.unit ?? []));
  const metric = units.filter((unit) => ['g', 'kg', 'ml', 'cl', 'dl', 'l'].includes(unit)).length;
  const customary = units.filter((unit) => ['oz', 'lb', 'cup', 'floz', 'pint', 'quart', 'stick'].includes(unit)).length;
  return metric > customary;
}

function partOf({ label, items }: Listed, index: number, kitchen: Kitchen, { foods }: Larder): Part {
  const lines = items.flatMap((text, at): Line[] => {
    const line = lineOfText(text, `${index}.${at}`, kitchen, foods);
    return line.reading.kind === 'not-an-ingredient' ? [] : [line];
  });
  const native: Ingredients = {
    key: `p${index}`,
    kitchen: kitchen.id,
    id: null,
    label,
    lines,
    cooked: null,
    from: null,
  };
  return { native, authored: [] };
}

function methodOf({ children }: Root, kitchen: Kitchen, taken: ReadonlySet<string>): Recipe['steps'][number]['native'] {
  const texts = children
    .filter(({ type }) => type !== 'yaml')
    .flatMap(textsIn)
    .filter((text) => !taken.has(text));
  const mentions = texts.flatMap((text, index) =>
    readMentions(text).flatMap((found, at): Mention[] => {
      if (found.kind !== 'pan' || !isLengthUnit(found.unit as 'in')) return [];
      const words = text.slice(found.span.start, found.span.end);
      const reading = readPan(words);
      return reading === null
        ? []
        : [{ key: `m${index}.${at}`, text: words, kind: 'pan', reading, depth: null, count: null }];
    }),
  );
  return { key: 'prose', kitchen: kitchen.id, id: null, mentions, prose: texts.join('\n'), cooked: null, from: null };
}

function textsIn(node: RootContent): string[] {
  return node.type === 'list' ? itemsOf(node) : [wordsIn(node)];
}
