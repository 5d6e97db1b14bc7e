import {
  codesOfLines,
  type Edit,
  type Kitchen,
  nameIn,
  statedIn,
  translateName,
  type Version,
  type VersionLine,
  type VersionPart,
} from '@retare/core';
import type { ListItem, Nodes, PhrasingContent } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import { mentionsOf } from '../place/annotation-readings.js';
import { spliceWords } from '../place/splice-words.js';
import type { RecipeReading } from '../read/reading.js';
import { copyNode, type Replacing } from './copy-node.js';
import { isExcuse } from './is-excuse.js';

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
  if (block === undefined) return null;
  const byNode = new Map<Nodes, VersionLine>();
  for (const line of part.lines) {
    const place = reading.lines.get(line.line.key);
    if (place !== undefined) byNode.set(place.paragraph, line).set(place.item, line);
  }
  const replacing: Replacing = (node) => {
    if (isExcuse(node)) return [];
    const line = byNode.get(node);
    if (line === undefined) return undefined;
    if (node.type === 'paragraph')
      return [{ type: 'paragraph', children: lineContent(line, node.children, version, reading) }];
    if (node.type !== 'listItem') return undefined;
    return isMerged(line) ? [] : [copyNode(node, replacing), ...furtherFoods(line).map((text) => itemLike(node, text))];
  };
  const draft = copyNode(block, replacing);
  draft.attributes = {
    ...(native.id === null ? {} : { id: native.id }),
    kitchen: version.kitchen.id,
    from: codesOfLines(native).join(' '),
  };
  return draft;
}

/** What joins the foods of a stand-in in one line: `240 ml milk and 1 tbsp lemon juice`. */
const joint = / and (?=[\d¼-¾⅐-⅞])/u;

function standsInEdit({ line, edits, food }: VersionLine): Edit | undefined {
  return food === line.food
    ? undefined
    : edits.find(({ start, text }) => start === line.name?.span.start && joint.test(text));
}

/** The second and further foods of a stand-in, each with its amount. */
function furtherFoods(line: VersionLine): string[] {
  return standsInEdit(line)?.text.split(joint).slice(1) ?? [];
}

function firstFoodOnly(line: VersionLine): Edit[] {
  const edit = standsInEdit(line);
  return line.edits.map((each) => (each === edit ? { ...each, text: each.text.split(joint)[0] ?? '' } : each));
}

function itemLike({ type, spread, checked }: ListItem, text: string): ListItem {
  const content: ListItem['children'] = [{ type: 'paragraph', children: [{ type: 'text', value: text }] }];
  return { type, ...(spread == null ? {} : { spread }), ...(checked == null ? {} : { checked }), children: content };
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
  const content = spliceWords(children, [...firstFoodOnly(line), ...annotationEdits(line, version, reading)]);
  return content.map((node) =>
    copyNode(node, (each) => (each.type === 'textDirective' ? [renamed(each, line, version.kitchen)] : undefined)),
  );
}

/** Annotations among the line's words: lengths, temperatures. */
function annotationEdits({ line, edits }: VersionLine, version: Version, reading: RecipeReading): Edit[] {
  const directives = reading.lines.get(line.key)?.words.directives ?? [];
  return directives.flatMap(({ node, start, end }): Edit[] => {
    const own = mentionsOf(version).get(reading.mentionKeys.get(node) ?? '');
    const changed = own !== undefined && own.text !== own.mention.text;
    if (!changed || edits.some((edit) => edit.start < end && start < edit.end)) return [];
    return [{ start, end, text: own.text }];
  });
}

/** An `amount` in a line names the food of the version. */
function renamed(node: TextDirective, { line, food }: VersionLine, kitchen: Kitchen): TextDirective {
  const copy = copyNode(node, () => undefined);
  const of = copy.attributes?.of;
  if (node.name !== 'amount' || of == null || food === null) return copy;
  const name = food === line.food ? translateName(food, of, kitchen.id) : nameIn(food, kitchen.id).many;
  return name === null ? copy : { ...copy, attributes: { ...copy.attributes, of: name } };
}
