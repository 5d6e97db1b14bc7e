import {
  amountAsWritten,
  codesIn,
  codesOfLines,
  codesOfMethod,
  type Ingredients,
  isLineCode,
  type Line,
  listed,
  type Method,
  type Moved,
  matchLines,
  movedSince,
} from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import { attributePlace, openingLine, placeOf, type RecipeReading } from 'remark-retare';
import type { Position } from 'unist';
import type { Finding } from '../finding.js';
import { told } from '../rules-of-the-text.js';

/** What a stale version is told with. */
export interface StaleContext {
  reading: RecipeReading;
  larder: Larder;
  settings: Settings;
  /** The post, as the author names it. */
  path: string;
}

/** A version's block, with what of its native block has moved. */
interface Stale {
  block: Ingredients | Method;
  from: string;
  now: string[];
  moved: Moved;
  /** What an author calls the native lines of now, in their order. */
  names: string[];
  /** The same with the amount of now, and what stands for it in the version. */
  amounts: string[];
  /** Where each stands in the post. */
  places: (Position | undefined)[];
  /** Words on each line's place here and in the version. */
  lines: string[];
}

/** Versions whose native lines have moved since they were drawn from them, and `from`s that hold no codes. */
export function staleVersions(context: StaleContext): Finding[] {
  const { recipe } = context.reading;
  return [
    ...recipe.parts.flatMap(({ native, authored }) => authored.flatMap((each) => ofIngredients(native, each, context))),
    ...recipe.steps.flatMap(({ native, authored }) => authored.flatMap((each) => ofMethod(native, each, context))),
  ];
}

function ofIngredients(native: Ingredients, block: Ingredients, context: StaleContext): Finding[] {
  const { reading } = context;
  return ofBlock(block, codesOfLines(native), context, (moved) => ({
    names: native.lines.map(nameOf),
    amounts: amountsInWords(native, block),
    places: native.lines.map((line) => placeOfLine(line, reading)),
    lines: linesInWords(native, block, moved, reading),
  }));
}

function ofMethod(native: Method, block: Method, context: StaleContext): Finding[] {
  const counted = native.mentions.filter(({ kind }) => kind !== 'length');
  const places = counted.map(({ key }) => context.reading.mentions.get(key)?.node.position);
  const names = counted.map(({ text }) => `\`${text}\``);
  const here = block.mentions.filter(({ kind }) => kind !== 'length');
  // Annotations are matched by their place among the others, where the version has kept them.
  const isKept = here.length === counted.length && here.every(({ kind }, at) => kind === counted[at]?.kind);
  return ofBlock(block, codesOfMethod(native), context, ({ changed, added }) => ({
    names,
    amounts: names.map((name, at) => (isKept ? `${name} (here \`${here[at]?.text}\`)` : name)),
    places,
    lines: [...changed, ...added].flatMap((at) => {
      const line = places[at]?.start.line;
      return line === undefined ? [] : [`\`${counted[at]?.text}\` is on line ${line}`];
    }),
  }));
}

function ofBlock(
  block: Ingredients | Method,
  now: string[],
  context: StaleContext,
  about: (moved: Moved) => Pick<Stale, 'names' | 'amounts' | 'places' | 'lines'>,
): Finding[] {
  const { from } = block;
  if (from === null) return [];
  const codes = codesIn(from);
  const slip = codes.find((code) => !isLineCode(code));
  if (slip !== undefined) return noCode(slip, block, now, context);
  const moved = movedSince(codes, now);
  return moved === null ? [] : stale({ block, from, now, moved, ...about(moved) }, context);
}

function noCode(slip: string, { key }: Ingredients | Method, now: string[], context: StaleContext): Finding[] {
  return told('annotation', 'error', context.settings, {
    text: `\`${slip}\` in \`from\` is no code of a native line. Copy \`from\` out of what \`retare draft\` prints`,
    actual: slip,
    expected: [now.join(' ')],
    place: fromPlace(key, context.reading),
  });
}

function stale({ block, from, now, moved, names, amounts, places, lines }: Stale, context: StaleContext): Finding[] {
  const { larder, settings, path, reading } = context;
  const whose = larder.kitchens.get(block.kitchen)?.adjective ?? block.kitchen;
  const what =
    'lines' in block
      ? `${whose} version was drawn from older native amounts`
      : `${whose} method was drawn from an older native one`;
  const findings = told('stale-version', 'error', settings, {
    text: `This ${what}: ${movedWords(moved, amounts)} since. ${reread(moved)}, then run \`retare draft ${path} --for ${block.kitchen}\``,
    actual: from,
    expected: [now.join(' ')],
    place: fromPlace(block.key, reading),
  });
  const [first] = [...moved.changed, ...moved.added];
  const cause = first === undefined ? undefined : { text: `The native line: ${names[first]}`, place: places[first] };
  return findings.map((finding) => ({
    ...finding,
    kitchens: [block.kitchen],
    note: lines.length === 0 ? null : lines.join('; '),
    ...(cause === undefined ? {} : { cause }),
  }));
}

/** `flour and milk have changed and honey has been added` */
function movedWords({ changed, added, removed }: Moved, names: readonly string[]): string {
  const has = (count: number): string => (count === 1 ? 'has' : 'have');
  const said = (places: readonly number[], verb: string): string[] =>
    places.length === 0 ? [] : [`${someOf(places.map((at) => names[at] ?? ''))} ${has(places.length)} ${verb}`];
  const gone =
    removed.length === 0
      ? []
      : [`${removed.length === 1 ? 'a line' : `${removed.length} lines`} ${has(removed.length)} been taken away`];
  return listed([...said(changed, 'changed'), ...said(added, 'been added'), ...gone], 'and');
}

/** Past four, the first three stand for the rest. */
function someOf(names: readonly string[]): string {
  return names.length <= 4 ? listed(names, 'and') : `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`;
}

function reread({ changed, added, removed }: Moved): string {
  const count = changed.length + added.length + removed.length;
  return count === 1 ? 'Re-read that line' : count === 2 ? 'Re-read both lines' : 'Re-read these lines';
}

/** An author knows a line by its food. */
function nameOf({ reading, text }: Line): string {
  return reading.food?.text ?? `\`${text}\``;
}

/** `milk (now `1¼ cups`, here `240 ml`)` */
function amountsInWords(native: Ingredients, block: Ingredients): string[] {
  const here = new Map([...matchLines(native.lines, block.lines)].map(([line, own]) => [own, line]));
  return native.lines.map((line) => {
    const own = here.get(line);
    const [now, there] = [amountAsWritten(line.reading), own === undefined ? null : amountAsWritten(own.reading)];
    const said = [now === null ? '' : `now \`${now}\``, there === null ? '' : `here \`${there}\``].filter(
      (words) => words !== '',
    );
    return said.length === 0 ? nameOf(line) : `${nameOf(line)} (${said.join(', ')})`;
  });
}

function linesInWords(native: Ingredients, block: Ingredients, moved: Moved, reading: RecipeReading): string[] {
  const matched = matchLines(native.lines, block.lines);
  const versionOf = new Map([...matched].map(([line, own]) => [own, line]));
  const here = [...moved.changed, ...moved.added].flatMap((at) => {
    const line = native.lines[at];
    const own = line === undefined ? undefined : placeOfLine(line, reading)?.start.line;
    const other = line === undefined ? undefined : versionOf.get(line);
    const version = other === undefined ? undefined : placeOfLine(other, reading)?.start.line;
    if (line === undefined || own === undefined) return [];
    return [
      `${nameOf(line)} is on line ${own}${version === undefined ? ', not in the version' : `, in the version on line ${version}`}`,
    ];
  });
  const alone = moved.removed.length === 0 ? [] : block.lines.filter((line) => !matched.has(line));
  const gone = alone.flatMap((line) => {
    const at = placeOfLine(line, reading)?.start.line;
    return at === undefined ? [] : [`${nameOf(line)} on line ${at} of the version has no native line now`];
  });
  return [...here, ...gone];
}

function placeOfLine(line: Line, { lines, source }: RecipeReading): Position | undefined {
  const at = lines.get(line.key);
  return at === undefined ? undefined : placeOf(at.words, 0, line.text.length, source, at.paragraph.position);
}

/** The codes themselves: what an author puts the new ones in the place of. */
function fromPlace(key: string, { blocks, source }: RecipeReading): Position | undefined {
  const block = blocks.get(key);
  if (block === undefined) return undefined;
  return attributePlace(block, 'from', source)?.value ?? openingLine(block, source);
}
