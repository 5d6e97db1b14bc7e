import type { Ingredients, Kitchen, Method, Part, Recipe, Steps } from '@retare/core';
import type { ListItem, Root } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import { toString as wordsIn } from 'mdast-util-to-string';
import { SKIP, visit } from 'unist-util-visit';
import { isAnnotation } from '../syntax/names.js';
import { type Attributes, readAttributes } from './attributes.js';
import type { Fault } from './fault.js';
import { readLineItem } from './read-line-item.js';
import { isMention, readMention } from './read-mention.js';
import type { ReadingContext, RecipeReading } from './reading.js';
import { wordsOf } from './words-of.js';

/** A block of ours with what its attributes say. */
interface Block {
  node: ContainerDirective;
  attributes: Attributes;
  kitchen: string;
}

/**
 * The recipe of a post, read from its tree. The tree is not changed.
 *
 * @param tree Parsed with the directives syntax; blocks that are never closed already taken apart.
 * @returns Null where the post has no annotation of ours.
 */
export function readRecipe(tree: Root, context: ReadingContext): RecipeReading | null {
  const reading = emptyReading(context);
  const blocks = blocksIn(tree, reading, context);
  visit(tree, 'leafDirective', (node) => {
    if (isAnnotation(node.type, node.name)) reading.markers.push(node);
  });
  const native = nativeOf(blocks, context);
  reading.recipe.kitchen = native;
  for (const block of blocks) block.kitchen ||= native;
  for (const block of blocks.filter(({ node }) => node.name === 'ingredients')) addIngredients(block, reading, context);
  for (const block of blocks.filter(({ node }) => node.name === 'method')) addMethod(block, reading, context);
  addProse(tree, reading, context);
  const found = blocks.length + reading.mentions.size + reading.markers.length + reading.faults.length;
  return found === 0 ? null : reading;
}

function emptyReading({ native, frontMatter }: ReadingContext): RecipeReading {
  const { makes, anchor, preserve } = frontMatter;
  const recipe: Recipe = { kitchen: native, makes, anchor, preserve, parts: [], steps: [] };
  return { recipe, faults: [], lines: new Map(), mentions: new Map(), blocks: new Map(), markers: [] };
}

function blocksIn(tree: Root, reading: RecipeReading, { kitchens }: ReadingContext): Block[] {
  const blocks: Block[] = [];
  visit(tree, 'containerDirective', (node: ContainerDirective) => {
    if (!isAnnotation(node.type, node.name)) return;
    const { attributes, faults } = readAttributes(node, [...kitchens.keys()]);
    reading.faults.push(...faults.map((fault) => ({ ...fault, place: openingOf(node) })));
    // A block for a kitchen that does not exist belongs to no version: it stays where it is, as it is.
    if (node.attributes?.kitchen !== undefined && attributes.kitchen === undefined) return SKIP;
    blocks.push({ node, attributes, kitchen: attributes.kitchen ?? '' });
    return SKIP;
  });
  return blocks;
}

/** The first line of a block: what an author would edit. */
function openingOf(node: ContainerDirective): Fault['place'] {
  const start = node.position?.start;
  if (start === undefined) return undefined;
  const label = node.children[0];
  const length = node.name.length + 3;
  const end = label?.type === 'paragraph' && label.data?.directiveLabel ? label.position?.end : undefined;
  return {
    start,
    end: end ?? { line: start.line, column: start.column + length, offset: (start.offset ?? 0) + length },
  };
}

/** Front matter first, then the first block that says, then the site. */
function nativeOf(blocks: readonly Block[], { frontMatter, native }: ReadingContext): string {
  if (frontMatter.kitchen !== null) return frontMatter.kitchen;
  const first = blocks.find(({ node }) => node.name === 'ingredients');
  return first === undefined || first.kitchen === '' ? native : first.kitchen;
}

function kitchenNamed(id: string, { kitchens }: ReadingContext): Kitchen {
  const kitchen = kitchens.get(id);
  if (kitchen === undefined) throw new RangeError(`There is no kitchen \`${id}\`.`);
  return kitchen;
}

function addIngredients(block: Block, reading: RecipeReading, context: ReadingContext): void {
  const { node, attributes, kitchen } = block;
  const { recipe } = reading;
  const ingredients: Ingredients = {
    key: `ingredients-${reading.blocks.size + 1}`,
    kitchen,
    id: attributes.id ?? null,
    label: labelOf(node),
    lines: [],
    cooked: attributes.cooked ?? null,
    from: attributes.from ?? null,
  };
  if (kitchen === recipe.kitchen) {
    recipe.parts.push({ native: ingredients, authored: [] });
    recipe.anchor ??= attributes.anchor ?? null;
  } else {
    const part = partFor(ingredients, recipe.parts);
    if (part === null) {
      reading.faults.push(homeless(node, kitchen, recipe.kitchen));
      return;
    }
    part.authored.push(ingredients);
  }
  reading.blocks.set(ingredients.key, node);
  ingredients.lines = linesOf(node, ingredients.key, kitchenNamed(kitchen, context), reading, context);
}

/** The part that a version belongs to: the one of its `#id`, else the nearest native block before it. */
function partFor({ id }: Ingredients, parts: readonly Part[]): Part | null {
  return (id === null ? undefined : parts.find(({ native }) => native.id === id)) ?? parts.at(-1) ?? null;
}

function homeless(node: ContainerDirective, kitchen: string, native: string): Fault {
  return {
    actual: kitchen,
    expected: [native],
    message: `This ${node.name} block for \`${kitchen}\` has no native block before it. Put the block for \`${native}\` first`,
    place: openingOf(node),
  };
}

function labelOf(node: ContainerDirective): string | null {
  const first = node.children[0];
  if (first?.type !== 'paragraph' || first.data?.directiveLabel !== true) return null;
  return wordsOf(first.children).text;
}

function linesOf(
  node: ContainerDirective,
  key: string,
  kitchen: Kitchen,
  reading: RecipeReading,
  context: ReadingContext,
): Ingredients['lines'] {
  const lines: Ingredients['lines'] = [];
  visit(node, 'listItem', (item: ListItem) => {
    const found = readLineItem(item, `${key}-${lines.length + 1}`, kitchen, context);
    if (found === null) return;
    lines.push(found.line);
    reading.lines.set(found.line.key, found.place);
  });
  return lines;
}

function addMethod(block: Block, reading: RecipeReading, context: ReadingContext): void {
  const { node, attributes, kitchen } = block;
  const { steps, kitchen: native } = reading.recipe;
  const method: Method = {
    key: `method-${reading.blocks.size + 1}`,
    kitchen,
    id: attributes.id ?? null,
    mentions: [],
    prose: wordsIn(node),
    cooked: attributes.cooked ?? null,
    from: attributes.from ?? null,
  };
  if (kitchen === native) steps.push({ native: method, authored: [] });
  else {
    const own = stepsFor(method, steps);
    if (own === null) {
      reading.faults.push(homeless(node, kitchen, native));
      return;
    }
    own.authored.push(method);
  }
  reading.blocks.set(method.key, node);
  visit(node, 'textDirective', (mention: TextDirective) => addMention(mention, method, reading, context));
}

function stepsFor({ id }: Method, steps: readonly Steps[]): Steps | null {
  return (id === null ? undefined : steps.find(({ native }) => native.id === id)) ?? steps.at(-1) ?? null;
}

/** Annotations outside method blocks, in notes and in ingredient lines, follow the kitchen too. */
function addProse(tree: Root, reading: RecipeReading, context: ReadingContext): void {
  const { recipe, blocks } = reading;
  const methods = new Set(
    recipe.steps.flatMap(({ native, authored }) => [native, ...authored]).map(({ key }) => blocks.get(key)),
  );
  const authored = new Set(recipe.parts.flatMap((part) => part.authored).map(({ key }) => blocks.get(key)));
  const prose: Method = {
    key: 'prose',
    kitchen: recipe.kitchen,
    id: null,
    mentions: [],
    prose: '',
    cooked: null,
    from: null,
  };
  visit(tree, (node) => {
    if (node.type === 'containerDirective' && (methods.has(node) || authored.has(node))) return SKIP;
    // An amount in an ingredient line is that line's own.
    if (node.type === 'containerDirective' && node.name === 'ingredients') {
      visit(node, 'textDirective', (inner: TextDirective) => {
        if (inner.name !== 'amount') addMention(inner, prose, reading, context);
      });
      return SKIP;
    }
    if (node.type === 'textDirective') addMention(node, prose, reading, context);
    return undefined;
  });
  if (prose.mentions.length > 0) recipe.steps.push({ native: prose, authored: [] });
}

function addMention(node: TextDirective, method: Method, reading: RecipeReading, context: ReadingContext): void {
  if (!isMention(node)) return;
  const key = `${method.key}-${method.mentions.length + 1}`;
  const { mention, faults } = readMention(node, key, kitchenNamed(method.kitchen, context), context);
  reading.faults.push(...faults);
  if (mention === null) return;
  method.mentions.push(mention);
  reading.mentions.set(key, { node, words: wordsOf(node.children) });
}
