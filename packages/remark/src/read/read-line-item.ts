import { findFood, findFoodOfLine, type Kitchen, type Line, type LineReading, readLine, type Span } from '@retare/core';
import type { ListItem, Paragraph, PhrasingContent } from 'mdast';
import type { TextDirective } from 'mdast-util-directive';
import { visit } from 'unist-util-visit';
import type { LinePlace, ReadingContext } from './reading.js';
import { wordsOf } from './words-of.js';

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
): { line: Line; place: LinePlace } | null {
  const paragraph = item.children.find((child): child is Paragraph => child.type === 'paragraph');
  if (paragraph === undefined) return null;
  const words = wordsOf(paragraph.children);
  if (words.text.trim() === '') return null;
  const override = amountIn(paragraph);
  const reading =
    override === null
      ? readLine(words.text, { kitchen: kitchen.units })
      : overridden(words.text, override, paragraph, kitchen);
  const named = findFoodOfLine(reading, context.foods, kitchen.id);
  const of = override?.attributes?.of;
  const food = of == null ? (named?.food ?? null) : findFood(of, context.foods, kitchen.id);
  return {
    line: { key, text: words.text, reading: withoutAnnotated(reading, paragraph), food, name: named?.name ?? null },
    place: { item, paragraph, words },
  };
}

/** An `amount` annotation in the line: it overrides what would be found. */
function amountIn(paragraph: Paragraph): TextDirective | null {
  let found: TextDirective | null = null;
  visit(paragraph, 'textDirective', (node: TextDirective) => {
    if (node.name === 'amount') found ??= node;
  });
  return found;
}

function overridden(text: string, annotation: TextDirective, paragraph: Paragraph, kitchen: Kitchen): LineReading {
  const label = wordsOf(annotation.children);
  const start = startOf(annotation, paragraph.children) ?? 0;
  const reading = readLine(label.text, { kitchen: kitchen.units });
  const shift = <Placed extends { span: Span }>(placed: Placed): Placed => ({
    ...placed,
    span: { start: placed.span.start + start, end: placed.span.end + start },
  });
  // The rest of the line still names the food.
  const whole = readLine(text, { kitchen: kitchen.units });
  return {
    ...reading,
    text,
    amounts: reading.amounts.map(shift),
    pack: reading.pack === null ? null : shift(reading.pack),
    amountSpans: reading.amountSpans.map(({ start: from, end }) => ({ start: from + start, end: end + start })),
    food: reading.food === null ? whole.food : shift(reading.food),
    size: reading.size === null ? null : shift(reading.size),
    further: reading.further.map(shift),
    doubt: reading.doubt === null ? null : shift(reading.doubt),
  };
}

/** Offset of a directive's words in the line. */
function startOf(target: TextDirective, nodes: readonly PhrasingContent[], from = 0): number | null {
  let at = from;
  for (const node of nodes) {
    if (node === target) return at;
    if ('children' in node) {
      const inner = startOf(target, node.children as PhrasingContent[], at);
      if (inner !== null) return inner;
    }
    at += wordsOf([node]).text.length;
  }
  return null;
}

/** A quantity that has an annotation of its own is converted by that. */
function withoutAnnotated(reading: LineReading, paragraph: Paragraph): LineReading {
  const spans: Span[] = [];
  visit(paragraph, 'textDirective', (node: TextDirective) => {
    const start = node.name === 'amount' ? null : startOf(node, paragraph.children);
    if (start !== null) spans.push({ start, end: start + wordsOf(node.children).text.length });
  });
  const free = reading.further.filter(
    ({ span }) => !spans.some(({ start, end }) => start <= span.start && span.end <= end),
  );
  return { ...reading, further: free };
}
