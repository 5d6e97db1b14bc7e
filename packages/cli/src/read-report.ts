import { parsePost } from '@retare/check';
import {
  type Exact,
  Exact as ExactNumber,
  type FoundMention,
  type Kitchen,
  type Line,
  type LineReading,
  type Mention,
  readMentions,
} from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import type { Root } from 'mdast';
import { matterOf, type RecipeReading, readPlainPost, readPost } from 'remark-retare';
import { VFile } from 'vfile';

/** A number as a decimal string of at most four places. */
export type Decimal = string;

/** One ingredient line, as it was understood. */
export interface ReadLine {
  line: number;
  part: string | null;
  text: string;
  kind: LineReading['kind'];
  amounts: { low: Decimal; high: Decimal | null; unit: string; approx: boolean }[];
  pack: { count: Decimal; size: Decimal; unit: string; word: string } | null;
  food: string | null;
  foodId: string | null;
  prep: string;
  optional: boolean;
  further: { low: Decimal; high: Decimal | null; unit: string }[];
  /** Why an amount was left unread; null where nothing was. */
  doubt: string | null;
}

/** A temperature, pan or length in the text. */
export interface ReadMention {
  line: number;
  kind: 'oven' | 'core' | 'temp' | 'pan' | 'length';
  low: Decimal;
  high: Decimal | null;
  unit: string;
}

/** What was understood of a post. */
export interface ReadReport {
  file: string;
  /** Its native kitchen; of a post without annotations a guess. */
  kitchen: string;
  /** From 0 to 1; 1 where the post or its site says so. */
  kitchenConfidence: number;
  makes: string | null;
  lines: ReadLine[];
  mentions: ReadMention[];
}

/**
 * What is understood of a post, annotated or plain.
 *
 * @param path As it is to be reported.
 */
export function readReport(text: string, path: string, larder: Larder, settings: Settings): ReadReport {
  const file = new VFile({ value: text, path });
  const tree = parsePost(file);
  const reading = readPost(tree, file, matterOf(tree, file), larder, settings);
  return reading === null || reading.recipe.parts.length === 0
    ? plainReport(tree, text, path, larder, settings)
    : annotatedReport(reading, path);
}

function annotatedReport(reading: RecipeReading, file: string): ReadReport {
  const { recipe } = reading;
  const lines = recipe.parts.flatMap(({ native }) =>
    native.lines.map((line) => {
      const place = reading.lines.get(line.key)?.item.position?.start.line ?? 0;
      return lineOf(line, place, native.label);
    }),
  );
  const mentions = recipe.steps.flatMap(({ native }) =>
    native.mentions.flatMap((mention) => {
      const line = reading.mentions.get(mention.key)?.node.position?.start.line ?? 0;
      return mentionValues(mention).map((value) => ({ line, ...value }));
    }),
  );
  return {
    file,
    kitchen: recipe.kitchen,
    kitchenConfidence: 1,
    makes: recipe.makes,
    lines,
    mentions: inOrder(mentions),
  };
}

function plainReport(tree: Root, text: string, file: string, larder: Larder, settings: Settings): ReadReport {
  const post = readPlainPost(tree, text, larder, servedBy(larder, settings));
  const own = larder.kitchens.get(post.guess.kitchen);
  const taken = new Set(post.lines.map(({ line }) => line));
  const mentions = bodyLines(tree, text)
    .filter(({ line }) => !taken.has(line))
    .flatMap(({ line, words }) => readMentions(words).map((mention) => ({ line, ...foundValue(mention, own) })));
  const lines = post.lines.map(({ read, line, part }) =>
    withUnsettled(lineOf(read, line, part), post.guess.confidence),
  );
  return {
    file,
    kitchen: post.guess.kitchen,
    kitchenConfidence: Number(post.guess.confidence.toFixed(2)),
    makes: post.makes,
    lines,
    mentions,
  };
}

/** Lines of the body: front matter and code are no text of the recipe. */
function bodyLines(tree: Root, text: string): { line: number; words: string }[] {
  const passed = new Set<number>();
  for (const node of tree.children) {
    if (node.type !== 'yaml' && node.type !== 'code') continue;
    for (let line = node.position?.start.line ?? 0; line <= (node.position?.end.line ?? -1); line++) passed.add(line);
  }
  return text.split(/\r?\n/).flatMap((words, index) => (passed.has(index + 1) ? [] : [{ line: index + 1, words }]));
}

function lineOf({ text, reading, food }: Line, line: number, part: string | null): ReadLine {
  const { kind, amounts, pack, prep, optional, further, doubt } = reading;
  return {
    line,
    part,
    text,
    kind,
    amounts: amounts.map(({ low, high, unit, approx }) => ({ low: decimal(low), high: orNull(high), unit, approx })),
    pack:
      pack === null
        ? null
        : {
            count: decimal(pack.count ?? new ExactNumber(1)),
            size: decimal(pack.size),
            unit: pack.unit,
            word: pack.word,
          },
    food: reading.food?.text ?? null,
    foodId: food?.id ?? null,
    prep,
    optional,
    further: further.map(({ low, high, unit }) => ({ low: decimal(low), high: orNull(high), unit })),
    doubt: doubt === null ? null : `${doubt.because} ${doubt.instead}`,
  };
}

/** Below this a guessed kitchen settles nothing. */
const sureEnough = 0.5;

/** What a unit holds is not known without a kitchen. */
const byKitchen: Readonly<Record<string, string>> = {
  tbsp: 'A tablespoon holds 14.8, 15 or 20 ml by country.',
  pint: 'A pint holds 473 ml in the US and 568 ml in the UK.',
};

function withUnsettled(line: ReadLine, confidence: number): ReadLine {
  const because = byKitchen[line.amounts[0]?.unit ?? ''];
  if (because === undefined || line.doubt !== null || confidence >= sureEnough) return line;
  return { ...line, doubt: `${because} Say which kitchen the post was written in.` };
}

type Value = Omit<ReadMention, 'line'>;

function mentionValues(mention: Mention): Value[] {
  switch (mention.kind) {
    case 'amount':
      return [];
    case 'oven':
      return mention.settings.map(({ low, high, unit }) => ({
        kind: 'oven',
        low: decimal(low),
        high: orNull(high),
        unit,
      }));
    case 'core':
    case 'temp':
      return mention.readings.map(({ low, high, unit }) => ({
        kind: mention.kind,
        low: decimal(low),
        high: orNull(high),
        unit,
      }));
    case 'pan': {
      const { sides, capacity, unit } = mention.reading;
      const low = sides[0] ?? capacity;
      return low == null ? [] : [{ kind: 'pan', low: decimal(low), high: orNull(sides[1] ?? null), unit }];
    }
    case 'length': {
      const { low, high, unit } = mention.reading;
      return [{ kind: 'length', low: decimal(low), high: orNull(high), unit }];
    }
  }
}

/** Degrees without a letter are those of the kitchen's own oven. */
function foundValue({ kind, low, high, unit, impliedUnit }: FoundMention, kitchen: Kitchen | undefined): Value {
  const meant = impliedUnit && (unit === 'C' || unit === 'F') ? (kitchen?.oven.unit ?? unit) : unit;
  return { kind, low: decimal(low), high: orNull(high), unit: meant };
}

/** The kitchens that a site serves: a guess is one of them. */
function servedBy({ kitchens }: Larder, settings: Settings): ReadonlyMap<string, Kitchen> {
  return new Map(
    settings.kitchens.flatMap((id) => {
      const kitchen = kitchens.get(id);
      return kitchen === undefined ? [] : [[id, kitchen]];
    }),
  );
}

function inOrder(mentions: readonly ReadMention[]): ReadMention[] {
  return [...mentions].sort((a, b) => a.line - b.line);
}

function decimal(value: Exact): Decimal {
  return value.toDecimalPlaces(4).toString();
}

function orNull(value: Exact | null): Decimal | null {
  return value === null ? null : decimal(value);
}
