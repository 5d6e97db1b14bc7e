import type { Around, Ingredients, Kitchen, Method, Recipe } from '@retare/core';
import type { ListItem, Paragraph, Root } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import { toString as wordsIn } from 'mdast-util-to-string';
import { SKIP, visit } from 'unist-util-visit';
import { isAnnotation } from '../syntax/names.js';
import { attributePlace } from './attribute-place.js';
import { readAttributes } from './attributes.js';
import { type Block, blocksIn, openingLine } from './blocks.js';
import type { Fault } from './fault.js';
import { oversizedShares } from './oversized-shares.js';
import { ownerOf } from './owner-of.js';
import { readLineItem } from './read-line-item.js';
import { isMention, readMention } from './read-mention.js';
import type { ReadingContext, RecipeReading } from './reading.js';
import { settleCores } from './settle-cores.js';
import { unlistedAnchors } from './unlisted-anchor.js';
import { unlistedShares } from './unlisted-shares.js';
import { wordsAround } from './words-around.js';
import { wordsOf } from './words-of.js';

/**
 * The recipe of a post, read from its tree. The tree is not changed.
 *
 * @param tree Parsed with the directives syntax; blocks that are never closed already taken apart.
 * @returns Empty for a post without annotations of ours.
 */
export function readRecipe(tree: Root, context: ReadingContext): RecipeReading {
  const { blocks, stray, faults, native } = blocksIn(tree, context);
  const reading = emptyReading(native, [...context.faults, ...faults], context);
  reading.stray.push(...stray);
  visit(tree, 'leafDirective', (node) => {
    if (!isAnnotation(node.type, node.name)) return;
    reading.markers.push(node);
    reading.faults.push(...readAttributes(node, context).faults);
  });
  for (const block of blocks) {
    if (block.node.name === 'ingredients') addIngredients(block, reading, context);
    else addMethod(block, reading, context);
  }
  addProse(tree, reading, context);
  settleCores(reading, context);
  const anchors = blocks.flatMap(({ node, kitchen, attributes: { anchor } }) =>
    anchor === undefined || kitchen !== native || node.name !== 'ingredients' ? [] : [{ node, anchor }],
  );
  reading.faults.push(
    ...unlistedShares(reading),
    ...oversizedShares(reading, context),
    ...unlistedAnchors(anchors, reading),
  );
  reading.faults.sort((a, b) => offsetOf(a) - offsetOf(b));
  return reading;
}

function offsetOf({ place }: Fault): number {
  return place?.start.offset ?? -1;
}

function emptyReading(kitchen: string, faults: Fault[], { frontMatter, source }: ReadingContext): RecipeReading {
  const { makes, anchor, preserve } = frontMatter;
  const recipe: Recipe = { kitchen, makes, anchor, preserve, parts: [], steps: [] };
  return {
    recipe,
    faults,
    lines: new Map(),
    mentions: new Map(),
    mentionKeys: new Map(),
    blocks: new Map(),
    stray: [],
    markers: [],
    source,
  };
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
    const { owner, fault } = ownerOf(block, recipe.parts, recipe.kitchen);
    if (owner === null) {
      leaveStray(block, fault, reading);
      return;
    }
    owner.authored.push(ingredients);
    if (recipe.preserve === true)
      reading.faults.push({ ...preserved(kitchen), place: openingLine(node, reading.source) });
  }
  reading.blocks.set(ingredients.key, node);
  ingredients.lines = linesOf(node, ingredients.key, kitchenNamed(kitchen, context), reading, context);
}

/** A preserve is shown as its author wrote it, in every kitchen. */
function preserved(kitchen: string): Omit<Fault, 'place'> {
  return {
    actual: kitchen,
    expected: ['preserve: false'],
    message: `This post is a preserve, whose native amounts are shown in every kitchen, so its lines for \`${kitchen}\` are not. Take the block away, or give them a post of their own`,
  };
}

function leaveStray({ node }: Block, fault: Omit<Fault, 'place'>, reading: RecipeReading): void {
  reading.stray.push(node);
  const about = fault.expected.every((each) => each.startsWith('#')) ? 'id' : 'kitchen';
  const attribute = attributePlace(node, about, reading.source) ?? attributePlace(node, 'kitchen', reading.source);
  reading.faults.push({ ...fault, place: attribute?.whole ?? openingLine(node, reading.source) });
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
    reading.faults.push(...found.faults);
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
    const { owner, fault } = ownerOf(block, steps, native);
    if (owner === null) {
      leaveStray(block, fault, reading);
      return;
    }
    owner.authored.push(method);
  }
  reading.blocks.set(method.key, node);
  visit(node, 'textDirective', (mention: TextDirective, index, parent) =>
    addMention(mention, wordsAround(index, parent), method, reading, context),
  );
}

/** Annotations outside method blocks, in notes and in native ingredient lines, follow the kitchen too. */
function addProse(tree: Root, reading: RecipeReading, context: ReadingContext): void {
  const { recipe, blocks } = reading;
  const nodesOf = (found: readonly { key: string }[]): (ContainerDirective | undefined)[] =>
    found.map(({ key }) => blocks.get(key));
  const apart = new Set<unknown>([
    ...nodesOf(recipe.steps.flatMap(({ native, authored }) => [native, ...authored])),
    ...nodesOf(recipe.parts.flatMap(({ authored }) => authored)),
    ...reading.stray,
  ]);
  const lines = new Set<Paragraph>([...reading.lines.values()].map(({ paragraph }) => paragraph));
  const base = { kitchen: recipe.kitchen, id: null, mentions: [], cooked: null, from: null };
  const prose: Method = { ...base, key: 'prose', prose: '' };
  visit(tree, (node, index, parent) => {
    if (apart.has(node)) return SKIP;
    if (node.type === 'textDirective') addMention(node, wordsAround(index, parent), prose, reading, context);
    if (node.type !== 'paragraph' || !lines.has(node)) return;
    // An amount in an ingredient line is that line's own.
    visit(node, 'textDirective', (inner: TextDirective, at, within) => {
      if (inner.name !== 'amount') addMention(inner, wordsAround(at, within), prose, reading, context);
    });
    return SKIP;
  });
  if (prose.mentions.length > 0) recipe.steps.push({ native: prose, authored: [] });
}

function addMention(
  node: TextDirective,
  around: Around,
  method: Method,
  reading: RecipeReading,
  context: ReadingContext,
): void {
  if (!isMention(node)) return;
  const key = `${method.key}-${method.mentions.length + 1}`;
  const { mention, faults } = readMention(node, key, kitchenNamed(method.kitchen, context), context, around);
  reading.faults.push(...faults);
  if (mention === null) return;
  method.mentions.push(mention);
  reading.mentions.set(key, { node, words: wordsOf(node.children) });
  reading.mentionKeys.set(node, key);
}
