import {
  applyEdits,
  codesOfMethod,
  listing,
  type Mention,
  panCount,
  readingIn,
  readLine,
  type Version,
  type VersionLine,
  type VersionMention,
  type VersionSteps,
  writeTerm,
} from '@retare/core';
import type { PhrasingContent } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import type { RecipeReading } from '../read/reading.js';
import { copyNode } from './copy-node.js';
import { isExcuse } from './is-excuse.js';
import { withoutExcuses } from './without-excuses.js';

/** What a method is drafted from. */
export interface MethodContext {
  version: Version;
  reading: RecipeReading;
  /** Which line of the version a share is of. */
  lineOf(mention: Extract<Mention, { kind: 'amount' }>): VersionLine | null;
}

/**
 * The `method` block of a version, its annotations kept with their new words so that they can still be checked.
 *
 * @returns Null where no amount, pan or temperature differs: then the native method serves that kitchen.
 */
export function draftMethod({ steps, mentions }: VersionSteps, context: MethodContext): ContainerDirective | null {
  const { native } = steps;
  const block = context.reading.blocks.get(native.key);
  if (block === undefined || !mentions.some(differs)) return null;
  const byKey = new Map(mentions.map((each) => [each.mention.key, each]));
  const draft = copyNode(withoutExcuses(block), (node) => {
    if (isExcuse(node)) return [];
    const own = node.type === 'textDirective' ? byKey.get(context.reading.mentionKeys.get(node) ?? '') : undefined;
    return own === undefined || node.type !== 'textDirective' ? undefined : annotation(node, own, context);
  });
  draft.attributes = {
    ...(native.id === null ? {} : { id: native.id }),
    kitchen: context.version.kitchen.id,
    from: codesOfMethod(native).join(' '),
  };
  return draft;
}

/** A length alone is converted well enough by itself. */
function differs({ mention, text, pan }: VersionMention): boolean {
  if (mention.kind === 'length') return false;
  return text !== mention.text || (mention.kind === 'pan' && pan?.count !== panCount(mention));
}

function annotation(node: TextDirective, own: VersionMention, context: MethodContext): PhrasingContent[] {
  if (own.foods.length > 0) return own.foods.flatMap((food, at) => sharedFood(node, food, own.foods.length - at));
  const { text } = own;
  // `the rest` is no amount that could be read back.
  if (own.mention.kind === 'amount' && !statesAmount(text, context.version)) return [{ type: 'text', value: text }];
  const copy = copyNode(node, () => undefined);
  if (text !== own.mention.text) copy.children = [{ type: 'text', value: text }];
  const attributes = attributesOf(node, own, context);
  for (const [key, value] of Object.entries(attributes)) copy.attributes = { ...copy.attributes, [key]: value };
  return [copy];
}

/**
 * Each food of a share is an amount of its own, that can be checked.
 *
 * @param left How many foods are still to come, this one counted.
 */
function sharedFood(
  node: TextDirective,
  { text, name }: VersionMention['foods'][number],
  left: number,
): PhrasingContent[] {
  const copy = copyNode(node, () => undefined);
  const share: TextDirective = {
    ...copy,
    children: [{ type: 'text', value: text }],
    attributes: { ...copy.attributes, of: name },
  };
  return left === 1 ? [share] : [share, { type: 'text', value: left === 2 ? ' and ' : ', ' }];
}

function statesAmount(text: string, { kitchen }: Version): boolean {
  const { amounts, doubt } = readLine(text, readingIn(kitchen));
  return amounts.length > 0 || doubt !== null;
}

function attributesOf(
  node: TextDirective,
  { mention, pan }: VersionMention,
  context: MethodContext,
): Record<string, string> {
  if (mention.kind === 'pan') {
    const saidBefore = node.attributes?.count == null && pan?.count === panCount(mention);
    return {
      ...(mention.depth === null || pan?.rim == null ? {} : { depth: writeTerm(pan.rim) }),
      // Where the author says no number here, it stands in the label, or in the words before it as long as it is kept.
      ...(mention.count === null || saidBefore ? {} : { count: String(pan?.count ?? mention.count) }),
    };
  }
  if (mention.kind !== 'amount' || mention.of === null) return {};
  const line = context.lineOf(mention);
  return line === null ? {} : { of: nameIn(line, context.version) ?? mention.of };
}

/** What a line of the version calls its food, read as the check will read it. */
function nameIn({ line, edits }: VersionLine, { kitchen }: Version): string | null {
  return readLine(applyEdits(line.text, edits), readingIn(kitchen)).food?.text ?? null;
}

/** Finds the version's line that a share is of. */
export function sharedLines(
  version: Version,
  native: Parameters<typeof listing>[1],
  foods: Parameters<typeof listing>[2],
): MethodContext['lineOf'] {
  const lines = version.parts.flatMap((part) => part.lines);
  const byLine = new Map(lines.map((each) => [each.line, each]));
  const listed = listing([...byLine.keys()], native, foods);
  return (mention) => {
    const own = listed(mention);
    return own === null ? null : (byLine.get(own) ?? null);
  };
}
