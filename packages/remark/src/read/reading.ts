import type { Food, Kitchen, Recipe } from '@retare/core';
import type { ListItem, Paragraph } from 'mdast';
import type { ContainerDirective, LeafDirective, TextDirective } from 'mdast-util-directive';
import type { Fault } from './fault.js';
import type { FrontMatter } from './front-matter.js';
import type { Words } from './words-of.js';

/** What a recipe is read against. */
export interface ReadingContext {
  foods: ReadonlyMap<string, Food>;
  kitchens: ReadonlyMap<string, Kitchen>;
  /** Kitchen of a post that does not say. */
  native: string;
  frontMatter: FrontMatter;
  /** The file, for places in it. */
  source: string;
  /** What has been found so far. */
  faults: readonly Fault[];
}

/** Where an ingredient line stands. */
export interface LinePlace {
  item: ListItem;
  paragraph: Paragraph;
  words: Words;
}

/** Where an annotation stands. */
export interface MentionPlace {
  node: TextDirective;
  words: Words;
}

/** A recipe, and the nodes of the tree that it was read from, by the keys of its lines, mentions, ingredients and methods. */
export interface RecipeReading {
  recipe: Recipe;
  /** In the order of the file, those without a place first. */
  faults: Fault[];
  lines: Map<string, LinePlace>;
  mentions: Map<string, MentionPlace>;
  /** Keys of mentions by their nodes. */
  mentionKeys: Map<TextDirective, string>;
  blocks: Map<string, ContainerDirective>;
  /** Blocks that belong to no version, such as one for a kitchen that does not exist: what they hold is shown as it is. */
  stray: ContainerDirective[];
  markers: LeafDirective[];
  /** The file, for places in it. */
  source: string;
}
