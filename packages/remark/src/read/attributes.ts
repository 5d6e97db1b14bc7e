import { near, oneOf, readLength } from '@retare/core';
import type { Directives } from 'mdast-util-directive';
import type { Position } from 'unist';
import { type AnnotationName, type AttributeKind, annotations } from '../syntax/names.js';
import { attributePlace } from './attribute-place.js';
import type { Fault } from './fault.js';

/** The attributes of an annotation that are known and hold what they may. */
export type Attributes = Readonly<Record<string, string>>;

/** What attributes are read against. */
interface AttributeContext {
  kitchens: ReadonlyMap<string, unknown>;
  source: string;
}

/**
 * Reads an annotation's attributes.
 *
 * @param whole Place of the annotation, for trees in which that of an attribute is not known.
 * @returns Only what is good; a fault for everything else, and which attributes it was meant to have.
 */
export function readAttributes(
  node: Directives,
  { kitchens, source }: AttributeContext,
  whole: Position | undefined = node.position,
): { attributes: Attributes; faults: Fault[]; meant: ReadonlySet<string> } {
  const shape: Readonly<Record<string, AttributeKind>> = annotations[node.name as AnnotationName].attributes;
  const attributes: Record<string, string> = {};
  const faults: Fault[] = [];
  const meant = new Set<string>();
  for (const [key, given] of Object.entries(node.attributes ?? {})) {
    const value = given ?? '';
    const kind = Object.hasOwn(shape, key) ? shape[key] : undefined;
    const known = kind === undefined ? near(key, Object.keys(shape)) : key;
    if (known !== undefined) meant.add(known);
    const place = attributePlace(node, key, source);
    if (kind === undefined) {
      faults.push({ ...unknownKey(node.name, key, known, Object.keys(shape)), place: place?.key ?? whole });
      continue;
    }
    const expected = misfit(kind, value, [...kitchens.keys()]);
    if (expected === null) attributes[key] = value;
    else faults.push({ ...badValue(node.name, key, value, expected), place: place?.value ?? place?.whole ?? whole });
  }
  return { attributes, faults, meant };
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

type Said = Omit<Fault, 'place'>;

function unknownKey(name: string, key: string, meant: string | undefined, allowed: readonly string[]): Said {
  const instead =
    meant !== undefined
      ? `Write \`${meant}\``
      : allowed.length === 0
        ? 'Take it away: it takes none'
        : `Use ${oneOf(allowed)}`;
  return {
    actual: key,
    expected: meant === undefined ? [...allowed] : [meant],
    message: `\`${name}\` has no attribute \`${key}\`. ${instead}`,
  };
}

function badValue(name: string, key: string, value: string, expected: string[]): Said {
  if (key === 'kitchen') return unknownKitchen(value, expected);
  if (value.trim() === '') {
    const such = expected[0] === 'a word' ? '' : ` such as ${oneOf(expected)}`;
    return {
      actual: value,
      expected,
      message: `\`${key}\` of \`${name}\` is empty. Give it a value${such}, or take it away`,
    };
  }
  return {
    actual: value,
    expected,
    message: `\`${key}\` of \`${name}\` cannot be \`${value}\`. Write it like ${oneOf(expected)}`,
  };
}

/** A kitchen id that the larder does not have. */
export function unknownKitchen(value: string, known: readonly string[]): Said {
  const meant = near(value, known);
  const instead = meant === undefined ? `Use ${oneOf(known)}, or add it to your larder file` : `Write \`${meant}\``;
  return {
    actual: value,
    expected: meant === undefined ? [...known] : [meant],
    message: `There is no kitchen \`${value}\`. ${instead}`,
  };
}
