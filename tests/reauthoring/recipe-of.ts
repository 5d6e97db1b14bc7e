import {
  applyEdits,
  findFood,
  type Ingredients,
  type Line,
  lineOfText,
  type Mention,
  type Method,
  type Recipe,
  readLengths,
  readLine,
  readOven,
  readPanIn,
  readTemperature,
  type Setting,
  type Version,
  type VersionLine,
  type VersionMention,
  versionFor,
} from '@retare/core';
import { kitchen, setting } from './setting.js';

/** A block of lines as an author writes it: one line a text. */
export interface Block {
  kitchen: string;
  lines: readonly string[];
  cooked?: string;
}

/** A post in short: its native block, versions of it, and the annotations of its method. */
export interface Post extends Block {
  versions?: readonly Block[];
  mentions?: readonly Mention[];
  methodVersions?: readonly { kitchen: string; mentions: readonly Mention[] }[];
  prose?: string;
  preserve?: boolean;
}

/** An ingredient line, read and found in the larder as a reader of posts does it. */
export function lineOf(text: string, kitchenId: string, key = text, { foods, kitchens }: Setting = setting): Line {
  return lineOfText(text, key, kitchens.get(kitchenId) ?? kitchen(kitchenId), foods);
}

/** An `amount` of a method: a share of the line that `of` names. */
export function amountOf(text: string, of: string, kitchenId: string, key = `${text} ${of}`): Mention {
  const reading = readLine(text, { kitchen: kitchen(kitchenId).units });
  return { key, text, kind: 'amount', reading, of, food: findFood(of, setting.foods, kitchenId) };
}

/** An `oven` of a method. */
export function ovenOf(text: string): Mention {
  return { key: text, text, kind: 'oven', settings: readOven(text) };
}

/** A `core` of a method, of a safe-temperature class or of none. */
export function coreOf(text: string, foodClass: string | null): Mention {
  return { key: text, text, kind: 'core', readings: readTemperature(text), of: foodClass, class: foodClass };
}

/** A `temp` of a method. */
export function tempOf(text: string): Mention {
  return { key: text, text, kind: 'temp', readings: readTemperature(text) };
}

/** A `pan` of a method. */
export function panOf(text: string, from = 'us'): Mention {
  const reading = readPanIn(text, kitchen(from));
  if (reading === null) throw new RangeError(`${text} is read as no pan.`);
  return { key: text, text, kind: 'pan', reading, depth: null, count: null };
}

/** A `length` of a method. */
export function spanOf(text: string): Mention {
  const readings = readLengths(text);
  if (readings.length === 0) throw new RangeError(`${text} is read as no length.`);
  return { key: text, text, kind: 'length', readings };
}

/** One annotation of a native method, in a version. */
export function mentionIn(mention: Mention, from: string, to: string): VersionMention {
  const found = versionOf({ kitchen: from, lines: ['1 egg'], mentions: [mention] }, to).steps[0]?.mentions[0];
  if (found === undefined) throw new RangeError('A version has a mention for each native one.');
  return found;
}

/** A recipe with one part and one method. */
export function recipeOf(post: Post, within: Setting = setting): Recipe {
  return {
    kitchen: post.kitchen,
    makes: null,
    anchor: null,
    preserve: post.preserve ?? null,
    parts: [{ native: blockOf(post, within), authored: (post.versions ?? []).map((each) => blockOf(each, within)) }],
    steps: [
      {
        native: methodOf(post.kitchen, post.mentions ?? [], post.prose ?? ''),
        authored: (post.methodVersions ?? []).map((each) => methodOf(each.kitchen, each.mentions, '')),
      },
    ],
  };
}

function blockOf({ kitchen: id, lines, cooked }: Block, within: Setting): Ingredients {
  return {
    key: `ingredients ${id}`,
    kitchen: id,
    id: null,
    label: null,
    lines: lines.map((text, index) => lineOf(text, id, `${id} ${index}`, within)),
    cooked: cooked ?? null,
    from: null,
  };
}

function methodOf(id: string, mentions: readonly Mention[], prose: string): Method {
  return { key: `method ${id}`, kitchen: id, id: null, mentions: [...mentions], prose, cooked: null, from: null };
}

/** A post's version for a kitchen. */
export function versionOf(post: Post, kitchenId: string, within: Setting = setting): Version {
  return versionFor(recipeOf(post, within), kitchenId, within);
}

/** One native line in another kitchen. */
export function converted(text: string, from: string, to: string, within: Setting = setting): VersionLine {
  const line = versionOf({ kitchen: from, lines: [text] }, to, within).parts[0]?.lines[0];
  if (line === undefined) throw new RangeError('A version has a line for each native one.');
  return line;
}

/** A version's line as it is read. */
export function textOf({ line, edits }: VersionLine): string {
  return applyEdits(line.text, edits);
}

/** Rules that a version's line breaks, with their reasons. */
export function rulesOf({ problems }: VersionLine): string[] {
  return problems.map(({ problem }) => ('reason' in problem ? `${problem.rule} ${problem.reason}` : problem.rule));
}

/** Rules that an annotation breaks. */
export function rulesOfMention({ problems }: VersionMention): string[] {
  return problems.map(({ problem }) => problem.rule);
}
