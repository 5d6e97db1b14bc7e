import {
  type Around,
  countBeside,
  Exact,
  findFood,
  type Kitchen,
  type Mention,
  near,
  oneOf,
  readingIn,
  readLength,
  readLengths,
  readLine,
  readOven,
  readPanIn,
  readTemperature,
  sizesNamed,
} from '@retare/core';
import type { TextDirective } from 'mdast-util-directive';
import { attributePlace } from './attribute-place.js';
import { type Attributes, readAttributes } from './attributes.js';
import type { Fault } from './fault.js';
import type { ReadingContext } from './reading.js';
import { placeOf, wordsOf } from './words-of.js';

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
 * @param around The words beside it: what a pan is may stand there.
 * @returns No mention where its label cannot be read; then a fault says so and its words stay.
 */
export function readMention(
  node: TextDirective,
  key: string,
  kitchen: Kitchen,
  context: ReadingContext,
  around: Around,
): { mention: Mention | null; faults: Fault[] } {
  const { attributes, faults } = readAttributes(node, context);
  const words = wordsOf(node.children);
  const { text } = words;
  const label = placeOf(words, 0, text.length, context.source, node.position);
  const { mention, problem } = interpret(node.name as MentionName, key, text, attributes, kitchen, {
    ...context,
    around,
  });
  if (mention === null) faults.push({ ...unread(node.name as MentionName, text, kitchen), place: label });
  else if (problem !== null) faults.push({ ...problem, place: ofPlace(node, context.source) ?? label });
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
  context: ReadingContext & { around: Around },
): Interpreted {
  const base = { key, text };
  const only = (mention: Mention | null): Interpreted => ({ mention, problem: null });
  switch (name) {
    case 'amount': {
      const reading = readLine(text, readingIn(kitchen));
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
      const reading = readPanIn(text, kitchen, context.around);
      const depth = attributes.depth === undefined ? null : readLength(attributes.depth);
      const count = attributes.count === undefined ? null : new Exact(attributes.count);
      if (reading === null) return only(null);
      const said = count ?? (reading.count === null ? countBeside(context.around) : null);
      return only({ ...base, kind: 'pan', reading, depth, count: said });
    }
    case 'length': {
      const readings = readLengths(text);
      return only(readings.length === 0 ? null : { ...base, kind: 'length', readings });
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
  return { mention, problem: ofWhat(text, of, classes) };
}

function ofWhat(text: string, of: string | null, classes: readonly string[]): Omit<Fault, 'place'> {
  const meant = of === null ? undefined : near(of, classes);
  const because = of === null ? `\`${text}\` does not say of what` : `\`${of}\` is no food with a safe temperature`;
  // How hot a loaf is inside says when it is done: no authority sets a minimum for it.
  const done = of === null ? '' : `; where it tells when ${of} is done, not when it is safe, write \`:temp[${text}]\``;
  const write =
    meant === undefined
      ? `Write \`of=\` with a listed meat or fish, or with ${oneOf(classes)}${done}`
      : `Write \`of=${meant}\``;
  return {
    actual: of ?? text,
    expected: meant === undefined ? [...classes] : [meant],
    message: `${because}, so this core temperature cannot be checked. ${write}`,
  };
}

/** Where `of` stands, if it does. */
function ofPlace(node: TextDirective, source: string): Fault['place'] {
  const place = attributePlace(node, 'of', source);
  return place?.value ?? place?.whole;
}

function unread(name: MentionName, text: string, kitchen: Kitchen): Omit<Fault, 'place'> {
  return name === 'pan' && /\p{L}/u.test(text) && !/\d/.test(text) ? sizeless(text, kitchen) : unreadable(name, text);
}

/** A pan that is only named: a size carries the batch, and a tool's word alone is the same everywhere. */
function sizeless(text: string, kitchen: Kitchen): Omit<Fault, 'place'> {
  const sizes = sizesNamed(text, kitchen);
  const expected = sizes.length === 0 ? [...examples.pan] : sizes;
  const known = sizes.length < 2 ? '' : `, and ${kitchen.adjective} ones differ`;
  const write = `Write ${oneOf(expected)} before it, or take the annotation away where no size matters`;
  return { actual: text, expected, message: `\`${text}\` says no size${known}. ${write}` };
}

/** What stands in a label that cannot be read. */
export function unreadable(name: MentionName, text: string): Omit<Fault, 'place'> {
  const expected = [...examples[name]];
  const message =
    text.trim() === ''
      ? `\`${name}\` has no words between its square brackets. Write it like \`:${name}[${expected[0]}]\``
      : `\`${text}\` is no ${nouns[name]} that can be read. Write it like ${oneOf(expected)}`;
  return { actual: text, expected, message };
}

const nouns: Readonly<Record<MentionName, string>> = {
  amount: 'amount',
  oven: 'oven setting',
  core: 'core temperature',
  temp: 'temperature',
  pan: 'pan size',
  length: 'length',
};
