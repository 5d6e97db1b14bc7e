import {
  amountAsWritten,
  boughtInWords,
  dimensionOf,
  foodsIn,
  type Kitchen,
  linesIn,
  overlap,
  type Stated,
  type Version,
  type VersionFood,
  type VersionLine,
  type VersionPart,
  type Weighed,
  writeStated,
} from '@retare/core';
import type { RootContent } from 'mdast';
import { massWords } from '../page/mass-words.js';
import { pageWords, percent } from '../page/words.js';
import { blockElement, words, wordsElement } from './element.js';
import { shownName } from './line-words.js';
import { marks } from './variants.js';

/**
 * What a reader might doubt, to be opened: the exact amount behind each rounded one, what to buy, and what will be left.
 *
 * @returns Null where nothing was worked out.
 */
export function working(part: VersionPart, version: Version, native: string): RootContent | null {
  const items = part.lines.flatMap((line) => workingOf(line, part, version));
  if (items.length === 0) return null;
  const list: RootContent = {
    type: 'list',
    ordered: false,
    spread: false,
    children: items.map((item) => ({
      type: 'listItem',
      spread: false,
      children: [{ type: 'paragraph', children: [words(item)] }],
    })),
  };
  const summary = wordsElement('summary', {}, [
    words(part.standing === 'converted' ? pageWords.working : pageWords.shopping),
  ]);
  const { dataRetare, className = [] } = marks([version.kitchen.id], native);
  return blockElement('details', { dataRetare, className: ['retare-working', ...className] }, [summary, list]);
}

function workingOf(line: VersionLine, part: VersionPart, version: Version): string[] {
  return linesIn(line).flatMap((each) => workingOfLine(each, part, version));
}

function workingOfLine(line: VersionLine, part: VersionPart, version: Version): string[] {
  const { kitchen } = version;
  return foodsIn(line).flatMap((own) => {
    if (own.stated === null) return [];
    const parts = [
      part.standing === 'converted' ? conversion(line, own, own.stated, kitchen) : null,
      shopping(line, own, version),
    ].filter((each) => each !== null);
    return parts.length === 0 ? [] : [`${shownName(line, own, kitchen.id)}: ${parts.join('; ')}`];
  });
}

function conversion(line: VersionLine, own: VersionFood, stated: Stated, kitchen: Kitchen): string | null {
  const span = line.line.reading.amountSpans[0];
  if (span === undefined) return null;
  // What reads as it was written was not rounded.
  const isShared = span.start === span.end;
  if (!isShared && !line.edits.some((edit) => overlap(edit, span))) return null;
  // The second food of `1 cup each flour and sugar` has the amount of the first.
  const { text, reading } = line.line;
  const written = isShared ? (amountAsWritten(reading) ?? '') : text.slice(span.start, span.end).trim();
  const here = writeStated(stated, kitchen);
  // Spoons of one food say nothing of spoons of another.
  const unit = own.food === line.line.food ? (stated.statements[0]?.[0]?.unit ?? 'g') : 'g';
  const exact = exactWords(own.native, unit);
  if (here === written || exact === null || isSameCount(own, stated)) return null;
  const drift = own.drift === null ? '' : `, ${percent(own.drift)}`;
  // Of a mixture each food is a share of what is written.
  const from = line.also.length === 0 ? written : `of ${written} ${line.line.name?.text.trim() ?? ''}`.trimEnd();
  return `${from}, exactly ${exact}, became ${here}${drift}`;
}

/** `2 ribs` that are `2 sticks` there were not rounded. */
function isSameCount({ drift }: VersionFood, { statements, pack }: Stated): boolean {
  const unit = statements[0]?.[0]?.unit;
  return pack === null && unit !== undefined && dimensionOf(unit) === 'count' && drift?.isZero() === true;
}

/** The unrounded amount, in the kind of unit that is shown. */
function exactWords({ grams, millilitres }: Weighed, unit: string): string | null {
  const byVolume =
    unit === 'ml' || unit === 'l' || unit === 'cup' || unit === 'tbsp' || unit === 'tsp' || unit === 'floz';
  if (byVolume && millilitres !== null) return `${millilitres.toDecimalPlaces(1)} ml`;
  if (grams !== null) return `${grams.toDecimalPlaces(1)} g`;
  return millilitres === null ? null : `${millilitres.toDecimalPlaces(1)} ml`;
}

function shopping(line: VersionLine, own: VersionFood, version: Version): string | null {
  const { bought, boughtWith } = own;
  const { kitchen } = version;
  if (bought === null || boughtWith !== null) return null;
  const left = bought.leftoverGrams.toDecimalPlaces(0);
  const leaves = left.greaterThan(0) ? `, which leaves ${massWords(left, kitchen)}` : '';
  return `buy ${boughtInWords(bought, kitchen).join(' and ')}${forSeveral(line, own, version)}${leaves}`;
}

/** The amounts of several lines that one purchase is for; nothing is said of one. */
function forSeveral({ line }: VersionLine, own: VersionFood, { parts, kitchen }: Version): string {
  const others = parts
    .flatMap(({ lines }) => lines.flatMap(linesIn).flatMap(foodsIn))
    .filter(({ food, boughtWith }) => food === own.food && boughtWith === line);
  const amounts = [own, ...others].flatMap(({ stated }) => (stated === null ? [] : [writeStated(stated, kitchen)]));
  return others.length === 0 ? '' : `, for ${amounts.join(' + ')}`;
}
