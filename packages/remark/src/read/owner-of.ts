import { near, oneOf } from '@retare/core';
import type { Block } from './blocks.js';
import type { Fault } from './fault.js';

/** A native block with the versions of it that have been found so far. */
interface Owner {
  native: { id: string | null };
  authored: readonly { kitchen: string }[];
}

/**
 * Which native block a version belongs to: the one of its `#id`, else the nearest before it.
 *
 * @param owners Native blocks before it, in the order of the file.
 * @returns Null with a fault where there is none, or where that kitchen has its version already.
 */
export function ownerOf<Found extends Owner>(
  { node, kitchen, attributes }: Block,
  owners: readonly Found[],
  native: string,
): { owner: Found; fault: null } | { owner: null; fault: Omit<Fault, 'place'> } {
  const id = attributes.id ?? null;
  const named = id === null ? undefined : owners.find((owner) => owner.native.id === id);
  const nearest = owners.at(-1);
  const none = (fault: Omit<Fault, 'place'>): { owner: null; fault: Omit<Fault, 'place'> } => ({ owner: null, fault });
  if (nearest === undefined) return none(noneBefore(node.name, kitchen, native));
  // Where native blocks have ids, another id is a slip and no mere link target.
  if (id !== null && named === undefined && nearest.native.id !== null) return none(noSuchId(node.name, id, owners));
  const owner = named ?? nearest;
  if (owner.authored.some((each) => each.kitchen === kitchen)) return none(second(node.name, kitchen));
  return { owner, fault: null };
}

function noneBefore(name: string, kitchen: string, native: string): Omit<Fault, 'place'> {
  return {
    actual: kitchen,
    expected: [native],
    message: `This \`${name}\` block is for the kitchen \`${kitchen}\`, and no native one (\`${native}\`) stands before it. Put the native block first, or name its kitchen under \`retare\` in the front matter`,
  };
}

function noSuchId(name: string, id: string, owners: readonly Owner[]): Omit<Fault, 'place'> {
  const ids = owners.flatMap(({ native }) => native.id ?? []);
  const meant = near(id, ids);
  const expected = (meant === undefined ? ids : [meant]).map((each) => `#${each}`);
  return {
    actual: `#${id}`,
    expected,
    message: `No native \`${name}\` block before this one has the id \`#${id}\`. Write ${oneOf(expected)}`,
  };
}

function second(name: string, kitchen: string): Omit<Fault, 'place'> {
  return {
    actual: kitchen,
    expected: ['#id'],
    message: `There is another \`${name}\` block for \`${kitchen}\` of the same part, so this one is not used. Tie each to its native block with the same \`#id\` in both, or take one away`,
  };
}
