import type { Root } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import { SKIP, visit } from 'unist-util-visit';
import { isAnnotation } from '../syntax/names.js';
import { type Attributes, readAttributes } from './attributes.js';
import type { Fault } from './fault.js';
import type { ReadingContext } from './reading.js';
import { firstLineOf } from './source-place.js';

/** A block of ours with what its attributes say. */
export interface Block {
  node: ContainerDirective;
  attributes: Attributes;
  kitchen: string;
}

/** The blocks of a post, in its order. */
export interface Blocks {
  blocks: Block[];
  /** Blocks for a kitchen that does not exist. They belong to no version. */
  stray: ContainerDirective[];
  faults: Fault[];
  /** Kitchen of the post. */
  native: string;
}

/** Finds a post's blocks and the kitchen of each. */
export function blocksIn(tree: Root, context: ReadingContext): Blocks {
  const found: Omit<Blocks, 'native'> = { blocks: [], stray: [], faults: [] };
  visit(tree, 'containerDirective', (node: ContainerDirective) => {
    if (!isAnnotation(node.type, node.name)) return;
    const { attributes, faults, meant } = readAttributes(node, context, openingLine(node, context.source));
    found.faults.push(...faults);
    // Taken for a native block, a version whose kitchen is misspelt would stand on the page beside the native one.
    if (meant.has('kitchen') && attributes.kitchen === undefined) found.stray.push(node);
    else found.blocks.push({ node, attributes, kitchen: attributes.kitchen ?? '' });
    return SKIP;
  });
  const native = nativeOf(found.blocks, context);
  return { ...found, native, blocks: found.blocks.map((block) => ({ ...block, kitchen: block.kitchen || native })) };
}

/** Front matter first, then the first block that says, then the site. */
function nativeOf(blocks: readonly Block[], { frontMatter, native }: ReadingContext): string {
  if (frontMatter.kitchen !== null) return frontMatter.kitchen;
  const first = blocks.find(({ node }) => node.name === 'ingredients') ?? blocks[0];
  return first === undefined || first.kitchen === '' ? native : first.kitchen;
}

/** The first line of a block: what an author would edit. */
export function openingLine(node: ContainerDirective, source: string): Fault['place'] {
  const start = node.position?.start.offset;
  return firstLineOf(node, start === undefined ? undefined : source.slice(start, node.position?.end.offset));
}
