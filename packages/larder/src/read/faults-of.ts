import { near, oneOf } from '@retare/core';
import { z } from 'zod';
import type { Fault, KeyPath } from './problem.js';

type Issue = z.core.$ZodIssue;

/**
 * What a schema has against a value, in the words of the data files.
 *
 * @param schema Every schema of ours says `takes …` of itself; where it does not, its kind is said.
 */
export function faultsOf(schema: z.ZodType, value: unknown, base: KeyPath = []): Fault[] {
  const result = schema.safeParse(value);
  if (result.success) return [];
  return result.error.issues
    .flatMap((issue) => faultsOfIssue(schema, value, issue, []))
    .map((fault) => ({
      ...fault,
      path: [...base, ...fault.path],
    }));
}

function faultsOfIssue(schema: z.ZodType, value: unknown, issue: Issue, above: KeyPath): Fault[] {
  const path = [...above, ...(issue.path as (string | number)[])];
  const read = valueAt(value, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey(path, key, keysAt(schema, path)));
    case 'invalid_key':
      return [{ path, on: 'key', message: `\`${path.at(-1)}\` ${issue.issues[0]?.message ?? 'is no key'}` }];
    case 'invalid_union': {
      const inner = issue.message.startsWith('takes ') ? undefined : innerIssues(issue.errors);
      if (inner && isBlock(read)) return inner.flatMap((each) => faultsOfIssue(schema, value, each, path));
      return [
        badValue(path, read, issue.message.startsWith('takes ') ? issue.message : 'takes `none` or a block of keys'),
      ];
    }
    case 'invalid_value': {
      const allowed = issue.values.map(String);
      return [{ ...badValue(path, read, `takes ${oneOf(allowed)}`, near(String(read), allowed)), allowed }];
    }
    case 'invalid_type':
      return [badValue(path, read, issue.message.startsWith('takes ') ? issue.message : kindOf(issue.expected))];
    default:
      return [badValue(path, read, issue.message)];
  }
}

/** Of the alternatives of a union, the one that looked into the value. */
const innerIssues = (errors: readonly Issue[][]): Issue[] | undefined =>
  errors.find((issues) => issues.every((issue) => issue.path.length > 0 || issue.code === 'unrecognized_keys'));

function badValue(path: KeyPath, read: unknown, takes: string, instead = fractionFor(read, takes)): Fault {
  const name = nameOf(path);
  if (read === undefined) return { path, on: 'key', message: `\`${name}\` is missing: it ${takes}` };
  const hint = instead === undefined ? '' : `. Write \`${instead}\``;
  return {
    path,
    on: 'value',
    message: `${name === '' ? 'This file' : `\`${name}\``} ${takes}, not ${shown(read)}${hint}`,
  };
}

function unknownKey(path: KeyPath, key: string, allowed: readonly string[]): Fault {
  const meant = near(key, allowed);
  const instead = meant === undefined ? `Use ${oneOf(allowed)}` : `Write \`${meant}\``;
  const where = nameOf(path) === '' ? 'here' : `of \`${nameOf(path)}\``;
  return { path: [...path, key], on: 'key', message: `\`${key}\` is no key ${where}. ${instead}`, allowed };
}

/** The key that a writer knows a value by: of a list item, the list's. */
const nameOf = (path: KeyPath): string => String(path.findLast((key) => typeof key === 'string') ?? '');

/** `5%` where a fraction is wanted: what it is as one. */
function fractionFor(read: unknown, takes: string): string | undefined {
  if (!takes.includes('fraction from 0 to 1') || typeof read !== 'string' || !read.endsWith('%')) return undefined;
  const percent = Number(read.slice(0, -1));
  return Number.isFinite(percent) && percent >= 0 && percent <= 100
    ? String(Number((percent / 100).toPrecision(12)))
    : undefined;
}

function shown(read: unknown): string {
  if (read === null || read === '') return 'nothing';
  if (Array.isArray(read)) return 'a list';
  return isBlock(read) ? 'a block of keys' : `\`${String(read)}\``;
}

const isBlock = (read: unknown): read is Record<string, unknown> =>
  typeof read === 'object' && read !== null && !Array.isArray(read);

function kindOf(expected: string): string {
  if (expected === 'array') return 'takes a list';
  if (expected === 'object' || expected === 'record') return 'takes a block of keys';
  if (expected === 'boolean') return 'takes `true` or `false`';
  return expected === 'number' || expected === 'int' ? 'takes a number' : 'takes words';
}

function valueAt(value: unknown, path: KeyPath): unknown {
  return path.reduce<unknown>(
    (inner, key) => (inner as Record<string | number, unknown> | null | undefined)?.[key],
    value,
  );
}

/** The keys that the schema knows at a path. */
function keysAt(schema: z.ZodType, path: KeyPath): string[] {
  let inner: unknown = schema;
  for (const key of [...path, null]) {
    while (inner instanceof z.ZodOptional) inner = inner.unwrap();
    if (inner instanceof z.ZodUnion) inner = inner.options.find((option) => option instanceof z.ZodObject);
    if (key === null) break;
    if (inner instanceof z.ZodObject) inner = inner.shape[key];
    else if (inner instanceof z.ZodArray) inner = inner.element;
    else if (inner instanceof z.ZodRecord) inner = inner.valueType;
  }
  return inner instanceof z.ZodObject ? Object.keys(inner.shape) : [];
}
