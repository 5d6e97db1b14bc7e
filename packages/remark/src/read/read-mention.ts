import {
  Exact,
  findFood,
  type Kitchen,
  type Mention,
  readLength,
  readLine,
  readOven,
  readPan,
  readTemperature,
} from '@retare/core';
import type { TextDirective } from 'mdast-util-directive';
import { type Attributes, readAttributes } from './attributes.js';
import { type Fault, oneOf } from './fault.js';
import type { ReadingContext } from './reading.js';
import { wordsOf } from './words-of.js';

/** What each inline annotation's label may hold, for a message. */
const examples = {
  amount: ['½ cup', '100 g'],
  oven: ['400°F', '180 °C/160 °C fan/gas 4'],
  core: ['165°F', '74 °C'],
  temp: ['110°F', '40 °C'],
  pan: ['9×13 in', '20 cm round', '2 lb loaf tin'],
  length: ['2 in', '5 cm'],
} as const;

type MentionName = keyof typeof examples;

/** Whether a directive is one of the six inline annotations. */
export function isMention(node: TextDirective): boolean {
  return Object.hasOwn(examples, node.name);
}

/**
 * One inline annotation.
 *
 * @returns No mention where its label cannot be read; then a fault says so and its words stay.
 */
export function readMention(
  node: TextDirective,
  key: string,
  kitchen: Kitchen,
  context: ReadingContext,
): { mention: Mention | null; faults: Fault[] } {
  const { attributes, faults } = readAttributes(node, [...context.kitchens.keys()]);
  const text = wordsOf(node.children).text;
  const { mention, problem } = interpret(node.name as MentionName, key, text, attributes, kitchen, context);
  if (mention === null) faults.push(unreadable(node, text));
  else if (problem !== null) faults.push({ ...problem, place: node.position });
  return { mention, faults };
}

interface Interpreted {
  mention: Mention | null;
  problem: Omit<Fault, 'place'> | null;
}

function interpret(
  name: MentionName,
  key: string,
  text: string,
  attributes: Attributes,
  kitchen: Kitchen,
  context: ReadingContext,
): Interpreted {
  const base = { key, text };
  const only = (mention: Mention | null): Interpreted => ({ mention, problem: null });
  switch (name) {
    case 'amount': {
      const reading = readLine(text, { kitchen: kitchen.units });
      if (reading.amounts.length === 0 && reading.doubt === null) return only(null);
      const words = attributes.of ?? reading.food?.text ?? '';
      const food = words === '' ? null : findFood(words, context.foods, kitchen.id);
      return only({ ...base, kind: 'amount', reading, of: attributes.of ?? null, food });
    }
    case 'oven': {
      const settings = readOven(text);
      return only(settings.length === 0 ? null : { ...base, kind: 'oven', settings });
    }
    case 'core':
      return core(base, text, attributes.of ?? null, kitchen, context);
    case 'temp': {
      const readings = readTemperature(text);
      return only(readings.length === 0 ? null : { ...base, kind: 'temp', readings });
    }
    case 'pan': {
      const reading = readPan(text);
      const depth = attributes.depth === undefined ? null : readLength(attributes.depth);
      const count = attributes.count === undefined ? null : new Exact(attributes.count);
      return only(reading === null ? null : { ...base, kind: 'pan', reading, depth, count });
    }
    case 'length': {
      const reading = readLength(text);
      return only(reading === null ? null : { ...base, kind: 'length', reading });
    }
  }
}

/** A core temperature without a known food can be held against no minimum. */
function core(
  base: { key: string; text: string },
  text: string,
  of: string | null,
  kitchen: Kitchen,
  context: ReadingContext,
): Interpreted {
  const readings = readTemperature(text);
  if (readings.length === 0) return { mention: null, problem: null };
  const classes = kitchen.safe.map((safe) => safe.class);
  const named =
    of === null ? null : classes.includes(of) ? of : (findFood(of, context.foods, kitchen.id)?.coreClass ?? null);
  const mention: Mention = { ...base, kind: 'core', readings, of, class: named };
  if (named !== null) return { mention, problem: null };
  const because = of === null ? `\`${text}\` does not say of what` : `\`${of}\` is no food with a safe temperature`;
  return {
    mention,
    problem: {
      actual: of ?? text,
      expected: classes,
      message: `${because}, so this core temperature cannot be checked. Write \`of=\` with a listed meat or fish, or ${oneOf(classes)}`,
    },
  };
}

function unreadable(node: TextDirective, text: string): Fault {
  const expected = [...examples[node.name as MentionName]];
  return {
    actual: text,
    expected,
    message: `\`${text}\` is no ${nouns[node.name as MentionName]} that can be read. Write it like ${oneOf(expected)}`,
    place: node.position,
  };
}

const nouns: Readonly<Record<MentionName, string>> = {
  amount: 'amount',
  oven: 'oven setting',
  core: 'core temperature',
  temp: 'temperature',
  pan: 'pan size',
  length: 'length',
};
