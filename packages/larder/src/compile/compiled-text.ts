import type { NameIndex } from '@retare/core';
import type { LarderData } from '../schema/larder-schema.js';

/** The package's data as it is shipped: what was read from the files, the index of its names, and a digest of it all. */
export interface CompiledLarder {
  kitchens: NonNullable<LarderData['kitchens']>;
  foods: NonNullable<LarderData['foods']>;
  digest: string;
  names: NameIndex;
}

/**
 * The text of `larder.json`: JSON with each food on a line of its own, so that a reader makes strings of and parses only the foods it
 * needs. ASCII, where a character is a byte.
 */
export function compiledText({ digest, kitchens, names, foods }: CompiledLarder): string {
  const lines = Object.entries(foods).map(([id, food]) => `${JSON.stringify(id)}:${asciiJson(food)}`);
  return [
    '{',
    `"digest":${asciiJson(digest)},`,
    `"kitchens":${asciiJson(kitchens)},`,
    `"names":${asciiJson(names)},`,
    '"foods":{',
    lines.join(',\n'),
    '}',
    '}',
    '',
  ].join('\n');
}

function asciiJson(value: unknown): string {
  return JSON.stringify(value).replace(/[^ -~]/g, (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
