import { near, oneOf } from '@retare/core';
import { unknownKitchen } from './attributes.js';

/** What holds for a whole post, under `retare:` in its front matter. */
export interface FrontMatter {
  kitchen: string | null;
  makes: string | null;
  anchor: string | null;
  preserve: boolean | null;
}

/** Something in the front matter that cannot be understood. */
export interface FrontMatterFault {
  /** The key under `retare`, or `retare` itself. */
  key: string;
  /** Which of the two an author would edit. */
  on: 'key' | 'value';
  actual: string;
  expected: string[];
  message: string;
}

const keys = ['kitchen', 'makes', 'anchor', 'preserve'] as const;

/**
 * Reads the `retare` key of a post's front matter.
 *
 * @param matter The whole front matter, already parsed; anything may be in it.
 * @param kitchens Ids that `kitchen` may hold.
 */
export function readFrontMatter(
  matter: unknown,
  kitchens: readonly string[],
): { frontMatter: FrontMatter; faults: FrontMatterFault[] } {
  const frontMatter: FrontMatter = { kitchen: null, makes: null, anchor: null, preserve: null };
  const own = isBlock(matter) ? matter.retare : undefined;
  if (own === undefined || own === null) return { frontMatter, faults: [] };
  if (!isBlock(own))
    return {
      frontMatter,
      faults: [
        fault('retare', own, [...keys], `\`retare\` takes a block of keys, not \`${String(own)}\`. Use ${oneOf(keys)}`),
      ],
    };
  const faults: FrontMatterFault[] = [];
  for (const [key, value] of Object.entries(own)) {
    const found = readKey(key, value, frontMatter, kitchens);
    if (found !== null) faults.push(found);
  }
  return { frontMatter, faults };
}

function readKey(key: string, value: unknown, into: FrontMatter, kitchens: readonly string[]): FrontMatterFault | null {
  switch (key) {
    case 'kitchen':
      if (typeof value !== 'string' || !kitchens.includes(value)) {
        const { actual, expected, message } = unknownKitchen(String(value), kitchens);
        return { key, on: 'value', actual, expected, message };
      }
      into.kitchen = value;
      return null;
    case 'preserve':
      if (typeof value !== 'boolean')
        return fault(
          key,
          value,
          ['true', 'false'],
          `\`preserve\` cannot be \`${String(value)}\`. Write \`true\` or \`false\``,
        );
      into.preserve = value;
      return null;
    case 'makes':
    case 'anchor':
      if (typeof value !== 'string' && typeof value !== 'number')
        return fault(
          key,
          value,
          ['words'],
          `\`${key}\` takes words, not a list or a block. Write them on one line, in quotes if they hold a colon`,
        );
      into[key] = String(value);
      return null;
    default:
      return unknownKey(key);
  }
}

function isBlock(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function fault(key: string, actual: unknown, expected: readonly string[], message: string): FrontMatterFault {
  return { key, on: 'value', actual: String(actual), expected: [...expected], message };
}

function unknownKey(key: string): FrontMatterFault {
  const meant = near(key, keys);
  const instead = meant === undefined ? `Use ${oneOf(keys)}` : `Write \`${meant}\``;
  const expected = meant === undefined ? [...keys] : [meant];
  return { key, on: 'key', actual: key, expected, message: `\`retare\` has no key \`${key}\`. ${instead}` };
}
