import type { Paragraph, RootContent } from 'mdast';
import type { ContainerDirective } from 'mdast-util-directive';
import { toString as wordsIn } from 'mdast-util-to-string';
import { wordsElement } from './element.js';
import { copyOf } from './splice-words.js';
import { merged, sideBySide } from './variants.js';

/** What stands in a block, its label aside. */
export function contentOf(block: ContainerDirective): RootContent[] {
  return block.children.filter((child) => !isLabel(child));
}

/** Whose label a kitchen's cook reads. */
export interface BlockLabel {
  kitchen: string;
  /** The block written for that kitchen, or the native one. */
  own: ContainerDirective | undefined;
  /** Its label stands in where the block has none. */
  native: ContainerDirective | undefined;
}

/** The name of a part or method, above it. */
export function partLabel(labels: readonly BlockLabel[], native: string): RootContent[] {
  const readings = labels.map(({ kitchen, own, native: fallback }) => {
    const label = labelOf(own) ?? labelOf(fallback);
    return { kitchen, same: label === undefined ? '' : wordsIn(label), children: () => copyOf(label?.children ?? []) };
  });
  if (readings.every(({ same }) => same === '')) return [];
  return [wordsElement('p', { className: ['retare-part'] }, sideBySide(merged(readings), native))];
}

function labelOf(block: ContainerDirective | undefined): Paragraph | undefined {
  return block?.children.find(isLabel);
}

function isLabel(node: RootContent): node is Paragraph {
  return node.type === 'paragraph' && node.data?.directiveLabel === true;
}
