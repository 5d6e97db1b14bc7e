import {
  findFood,
  findFoodOfLine,
  type Kitchen,
  type Line,
  type LineReading,
  lineOfText,
  readingIn,
  readLine,
  type Span,
} from '@retare/core';
import type { ListItem, Paragraph } from 'mdast';
import { readAttributes } from './attributes.js';
import type { Fault } from './fault.js';
import { unreadable } from './read-mention.js';
import type { LinePlace, ReadingContext } from './reading.js';
import { placeOf, type Words, wordsOf } from './words-of.js';

/** An annotation among the words of a line. */
type InLine = Words['directives'][number];

/**
 * One list item as an ingredient line.
 *
 * @returns Null for an item without words of its own (a picture, a bare sub-list).
 */
export function readLineItem(
  item: ListItem,
  key: string,
  kitchen: Kitchen,
  context: ReadingContext,
): { line: Line; place: LinePlace; faults: Fault[] } | null {
  const paragraph = item.children.find((child): child is Paragraph => child.type === 'paragraph');
  if (paragraph === undefined) return null;
  const words = wordsOf(paragraph.children);
  if (words.text.trim() === '') return null;
  const override = words.directives.find(({ node }) => node.name === 'amount');
  const whole = lineOfText(words.text, key, kitchen, context.foods);
  const { line, faults } =
    override === undefined ? { line: whole, faults: [] } : withOverride(whole, override, kitchen, context);
  return {
    line: { ...line, reading: withoutAnnotated(line.reading, words) },
    place: { item, paragraph, words },
    faults,
  };
}

/** The line as its annotation says; what else its words count is left to the annotation's author. */
function withOverride(
  { plus: _, ...line }: Line,
  override: InLine,
  kitchen: Kitchen,
  context: ReadingContext,
): { line: Line; faults: Fault[] } {
  const whole = readLine(line.text, readingIn(kitchen));
  const { reading, of, faults } = overridden(whole, override, kitchen, context);
  const named = findFoodOfLine(reading, context.foods, kitchen.id);
  const food = of === undefined ? (named?.food ?? null) : findFood(of, context.foods, kitchen.id);
  return { line: { ...line, reading, food, name: named?.name ?? null }, faults };
}

/** An `amount` annotation in the line overrides what would be found; one that cannot be read does not. */
function overridden(
  whole: LineReading,
  { node, start }: InLine,
  kitchen: Kitchen,
  context: ReadingContext,
): { reading: LineReading; of: string | undefined; faults: Fault[] } {
  const { attributes, faults } = readAttributes(node, context);
  const label = wordsOf(node.children);
  const reading = readLine(label.text, readingIn(kitchen));
  if (reading.amounts.length === 0 && reading.doubt === null) {
    const place = placeOf(label, 0, label.text.length, context.source, node.position);
    faults.push({ ...unreadable('amount', label.text), place });
    return { reading: whole, of: attributes.of, faults };
  }
  const shift = <Placed extends { span: Span }>(placed: Placed): Placed => ({
    ...placed,
    span: moved(placed.span, start),
  });
  return {
    of: attributes.of,
    faults,
    reading: {
      ...reading,
      text: whole.text,
      amounts: reading.amounts.map(shift),
      pack: reading.pack === null ? null : shift(reading.pack),
      amountSpans: reading.amountSpans.map((span) => moved(span, start)),
      // The rest of the line still names the food, and the size of its pieces.
      food: reading.food === null ? whole.food : shift(reading.food),
      size: reading.size === null ? whole.size : shift(reading.size),
      further: reading.further.map(shift),
      doubt: reading.doubt === null ? null : shift(reading.doubt),
    },
  };
}

function moved({ start, end }: Span, by: number): Span {
  return { start: start + by, end: end + by };
}

/** A quantity that has an annotation of its own is converted by that. */
function withoutAnnotated(reading: LineReading, { directives }: Words): LineReading {
  const own = directives.filter(({ node }) => node.name !== 'amount');
  const further = reading.further.filter(
    ({ span }) => !own.some(({ start, end }) => start <= span.start && span.end <= end),
  );
  return { ...reading, further };
}
