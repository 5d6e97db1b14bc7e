import {
  type AuthoredRatio,
  Exact,
  type Ingredients,
  isBent,
  type Kitchen,
  percentWords,
  ratiosOfVersion,
  writeStated,
} from '@retare/core';
import type { Larder, Settings } from '@retare/larder';
import { openingLine, placeOf, type RecipeReading, settingOf } from 'remark-retare';
import type { Position } from 'unist';
import type { Finding } from '../finding.js';
import { told } from '../rules-of-the-text.js';

/** Versions that their author wrote and that bend a ratio which makes the dish work. */
export function ratioDrifts(reading: RecipeReading, larder: Larder, settings: Settings): Finding[] {
  const { recipe } = reading;
  // A preserve has no versions: every kitchen reads the native words.
  if (recipe.preserve === true) return [];
  const setting = settingOf(larder, settings);
  return recipe.parts.flatMap((part) =>
    part.authored.flatMap((block) => {
      const kitchen = larder.kitchens.get(block.kitchen);
      if (kitchen === undefined) return [];
      return ratiosOfVersion(part, block, { recipe, setting })
        .filter(isBent)
        .flatMap((ratio) => bent(ratio, block, kitchen, reading, settings));
    }),
  );
}

function bent(
  ratio: AuthoredRatio,
  block: Ingredients,
  kitchen: Kitchen,
  reading: RecipeReading,
  settings: Settings,
): Finding[] {
  const amount = amountIn(ratio, reading);
  const instead = ratio.instead === null ? null : writeStated(ratio.instead, kitchen);
  const write =
    instead === null || amount === null
      ? 'Re-read the amounts, or draft this version anew'
      : `Write \`${instead}\` for \`${amount.text}\``;
  const found = told('ratio-drift', 'warning', settings, {
    text: `${inWords(ratio, kitchen)}. ${write}`,
    actual: amount?.text ?? ratio.name,
    expected: instead === null ? [] : [instead],
    place: amount?.place ?? openingOf(block, reading),
  });
  return found.map((finding) => ({ ...finding, kitchens: [kitchen.id], note: inNumbers(ratio) }));
}

function inWords(ratio: AuthoredRatio, { adjective }: Kitchen): string {
  const { drift, limit } = ratio;
  const { what, to } = sidesOf(ratio);
  const [by, most] = percentWords(Math.abs(drift), limit);
  if (ratio.version === 0)
    return `This ${adjective} version leaves out ${what}, and its native ratio${to} may drift by ${most} only`;
  const are = isPlural(ratio, what) ? 'are' : 'is';
  return `${what.charAt(0).toUpperCase()}${what.slice(1)} in this ${adjective} version ${are} ${by} ${drift > 0 ? 'above' : 'below'} the native ratio${to}; its limit is ${most}`;
}

/** A food by the words of its line, where there is one line; what it is held against, where that is not the whole. */
function sidesOf({ name, lines, nativeLines }: AuthoredRatio): { what: string; to: string } {
  const [above = name, below = ''] = name.split(' : ');
  const [line] = lines.length > 0 ? lines : nativeLines;
  // Of self-raising flour only the leavening, or the salt, may be what counts.
  const alone = Math.max(lines.length, nativeLines.length) === 1 && line?.food?.contains.length === 0;
  const what = (alone ? line?.reading.food?.text : undefined) ?? above;
  return { what, to: below === 'whole' ? '' : ` to ${below}` };
}

/** `eggs`, by the larder's two names of one thing; `molasses` is one. */
function isPlural({ lines }: AuthoredRatio, what: string): boolean {
  const names = lines.flatMap(({ food }) => Object.values(food?.names ?? {}).flat());
  return names.some(({ one, many }) => one !== many && what.toLowerCase().endsWith(many));
}

/** `native 2.05 g in 100 g, here 2.34 g` */
function inNumbers({ name, native, version }: AuthoredRatio): string {
  const grams = (ratio: number): string => `${new Exact(ratio).times(100).toSignificantDigits(3)} g`;
  const below = name.split(' : ')[1] ?? '';
  return `native ${grams(native)} to 100 g ${below === 'whole' ? 'of the whole' : `of ${below}`}, here ${grams(version)}`;
}

/** The amount that bends the ratio, where it is a single one. */
function amountIn(
  { lines }: AuthoredRatio,
  reading: RecipeReading,
): { text: string; place: Position | undefined } | null {
  const [line] = lines;
  const at = line === undefined ? undefined : reading.lines.get(line.key);
  const span = line?.reading.amountSpans[0];
  if (lines.length !== 1 || line === undefined || at === undefined || span === undefined) return null;
  // Of `1 tsp each salt and pepper` no words are the pepper's own.
  if (span.start === span.end) return null;
  const text = line.text.slice(span.start, span.end);
  const start = span.start + text.length - text.trimStart().length;
  const place = placeOf(at.words, start, start + text.trim().length, reading.source, at.paragraph.position);
  return { text: text.trim(), place };
}

function openingOf({ key }: Ingredients, { blocks, source }: RecipeReading): Position | undefined {
  const block = blocks.get(key);
  return block === undefined ? undefined : openingLine(block, source);
}
