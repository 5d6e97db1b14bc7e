import {
  codesOfLines,
  type FurtherFood,
  type Kitchen,
  nameIn,
  statedIn,
  translateName,
  type Version,
  type VersionLine,
  type VersionPart,
} from '@retare/core';
import type { ListItem, Nodes, Paragraph, PhrasingContent } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import { annotationEdits } from '../place/annotation-edits.js';
import { spliceWords } from '../place/splice-words.js';
import type { RecipeReading } from '../read/reading.js';
import { copyNode, type Replacing } from './copy-node.js';
import { isExcuse } from './is-excuse.js';
import { withoutExcuses } from './without-excuses.js';

/**
 * The `ingredients` block of a version: the native block with every line in its new words. Markup that the author put around the words
 * stays. A line whose food is had from another line's amount falls away; a stand-in of several foods gives a line for each.
 */
export function draftIngredients(
  part: VersionPart,
  version: Version,
  reading: RecipeReading,
): ContainerDirective | null {
  const { native } = part.part;
  const block = reading.blocks.get(native.key);
  // Of a block without a line there is nothing to say that it was drawn from.
  if (block === undefined || native.lines.length === 0) return null;
  const byNode = new Map<Nodes, VersionLine>();
  for (const line of part.lines) {
    const place = reading.lines.get(line.line.key);
    if (place !== undefined) byNode.set(place.paragraph, line).set(place.item, line);
  }
  const replacing: Replacing = (node) => {
    if (isExcuse(node)) return [];
    const line = byNode.get(node);
    if (line === undefined) return undefined;
    if (node.type === 'paragraph') return [paragraphOf(node, line)];
    if (node.type !== 'listItem') return undefined;
    return isMerged(line)
      ? []
      : [copyNode(node, replacing), ...line.also.flatMap((food) => furtherItem(node, line, food))];
  };
  const paragraphOf = (node: Paragraph, line: VersionLine): Paragraph => ({
    type: 'paragraph',
    children: lineContent({ ...line, edits: line.alone }, node.children, version, reading),
  });
  /** A further food of a stand-in: an item like its line's, without what else stands in it. */
  const furtherItem = (node: ListItem, line: VersionLine, food: FurtherFood): ListItem[] => {
    const own = reading.lines.get(line.line.key)?.paragraph;
    if (food.stated === null || own === undefined) return [];
    const { type, spread, checked } = node;
    const marked = { ...(spread == null ? {} : { spread }), ...(checked == null ? {} : { checked }) };
    return [{ type, ...marked, children: [paragraphOf(own, { ...line, ...food })] }];
  };
  const draft = copyNode(withoutExcuses(block), replacing);
  draft.attributes = {
    ...(native.id === null ? {} : { id: native.id }),
    kitchen: version.kitchen.id,
    from: codesOfLines(native).join(' '),
  };
  return draft;
}

/** Its native line states an amount, and what serves it is stated in another line. */
export function isMerged({ line, food, stated }: VersionLine): boolean {
  return stated === null && food?.role !== 'cure' && statedIn(line.reading) !== null;
}

function lineContent(
  line: VersionLine,
  children: readonly PhrasingContent[],
  version: Version,
  reading: RecipeReading,
): PhrasingContent[] {
  const content = spliceWords(children, [
    ...line.edits,
    ...annotationEdits(line, version, reading, ({ text }) => text),
  ]);
  const rename = (node: Nodes): TextDirective | undefined =>
    node.type === 'textDirective' ? renamed(node, line, version.kitchen) : undefined;
  return content.map(
    (node) =>
      rename(node) ??
      copyNode(node, (each) => {
        const own = rename(each);
        return own === undefined ? undefined : [own];
      }),
  );
}

/** An `amount` in a line names the food of the version. */
function renamed(node: TextDirective, { line, food }: VersionLine, kitchen: Kitchen): TextDirective {
  const copy = copyNode(node, () => undefined);
  const of = copy.attributes?.of;
  if (node.name !== 'amount' || of == null || food === null) return copy;
  const name = food === line.food ? translateName(food, of, kitchen.id) : nameIn(food, kitchen.id).many;
  return name === null ? copy : { ...copy, attributes: { ...copy.attributes, of: name } };
}
