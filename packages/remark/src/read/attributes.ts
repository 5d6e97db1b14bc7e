import { readLength } from '@retare/core';
import type { Directives } from 'mdast-util-directive';
import { type AnnotationName, type AttributeKind, annotations } from '../syntax/names.js';
import { type Fault, oneOf } from './fault.js';

/** The attributes of an annotation that are known and hold what they may. */
export type Attributes = Readonly<Record<string, string>>;

/**
 * Reads an annotation's attributes.
 *
 * @param kitchens Ids that `kitchen` may hold.
 * @returns Only what is good; a fault for everything else.
 */
export function readAttributes(
  node: Directives,
  kitchens: readonly string[],
): { attributes: Attributes; faults: Fault[] } {
  const shape: Readonly<Record<string, AttributeKind>> = annotations[node.name as AnnotationName].attributes;
  const attributes: Record<string, string> = {};
  const faults: Fault[] = [];
  for (const [key, value] of Object.entries(node.attributes ?? {})) {
    const kind = Object.hasOwn(shape, key) ? shape[key] : undefined;
    const expected = kind === undefined ? null : misfit(kind, value ?? '', kitchens);
    if (kind === undefined) faults.push(unknownKey(node, key, Object.keys(shape)));
    else if (expected !== null) faults.push(badValue(node, key, value ?? '', expected));
    else attributes[key] = value ?? '';
  }
  return { attributes, faults };
}

/** What the value should be, where it is not; null where it is good. */
function misfit(kind: AttributeKind, value: string, kitchens: readonly string[]): string[] | null {
  switch (kind) {
    case 'kitchen':
      return kitchens.includes(value) ? null : [...kitchens];
    case 'date':
      return isDate(value) ? null : ['2026-05-01'];
    case 'length':
      return readLength(value) === null ? ['2 in', '5 cm'] : null;
    case 'count':
      return /^[1-9]\d?$/.test(value) ? null : ['2'];
    case 'words':
    case 'id':
      return value.trim() === '' ? ['a word'] : null;
  }
}

/** A day of the calendar, ISO 8601. */
function isDate(value: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  const date = new Date(`${value}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(value);
}

function unknownKey(node: Directives, key: string, allowed: readonly string[]): Fault {
  const instead = allowed.length === 0 ? 'Take it away: it has none' : `Use ${oneOf(allowed)}`;
  return {
    actual: key,
    expected: [...allowed],
    message: `\`${node.name}\` has no attribute \`${key}\`. ${instead}`,
    place: node.position,
  };
}

function badValue(node: Directives, key: string, value: string, expected: string[]): Fault {
  const message =
    key === 'kitchen'
      ? `There is no kitchen \`${value}\`. Use ${oneOf(expected)}, or one from your larder file`
      : `\`${key}\` of \`${node.name}\` cannot be \`${value}\`. Write ${oneOf(expected)}, for example`;
  return { actual: value, expected, message, place: node.position };
}
