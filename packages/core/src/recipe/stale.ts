/** How native lines have moved since a version was drawn from them. */
export interface Moved {
  /** Places of lines that are not what they were, counted among the native lines of now. */
  changed: number[];
  /** Places of lines that were not there. */
  added: number[];
  /** Places in `from` of lines that are gone. */
  removed: number[];
}

/**
 * Compares the codes that a version was drawn from with those of the native lines of now. Lines that only change places have not moved.
 *
 * @returns Null where nothing has moved.
 */
export function movedSince(from: readonly string[], now: readonly string[]): Moved | null {
  const gone = unmatched(from, now);
  const come = unmatched(now, from);
  if (gone.length + come.length === 0) return null;
  const moved: Moved = { changed: [], added: [], removed: [] };
  for (const { before, after } of gaps(from, now)) {
    const old = before.filter((at) => gone.includes(at));
    const fresh = after.filter((at) => come.includes(at));
    const both = Math.min(old.length, fresh.length);
    moved.changed.push(...fresh.slice(0, both));
    moved.added.push(...fresh.slice(both));
    moved.removed.push(...old.slice(both));
  }
  return moved;
}

/** Places of those codes that the others do not have, or have less often. */
function unmatched(codes: readonly string[], others: readonly string[]): number[] {
  const left = new Map<string, number>();
  for (const code of others) left.set(code, (left.get(code) ?? 0) + 1);
  return codes.flatMap((code, at) => {
    const count = left.get(code) ?? 0;
    left.set(code, count - 1);
    return count > 0 ? [] : [at];
  });
}

/** Places between the codes of the longest common run: what stands in the same gap has taken another's place. */
function gaps(from: readonly string[], now: readonly string[]): { before: number[]; after: number[] }[] {
  const lengths = commonLengths(from, now);
  const found = [{ before: [] as number[], after: [] as number[] }];
  let [at, other] = [0, 0];
  while (at < from.length || other < now.length) {
    const gap = found.at(-1);
    if (at < from.length && other < now.length && from[at] === now[other]) {
      found.push({ before: [], after: [] });
      at++;
      other++;
    } else if (
      other >= now.length ||
      (at < from.length && lengthAt(lengths, at + 1, other) >= lengthAt(lengths, at, other + 1))
    )
      gap?.before.push(at++);
    else gap?.after.push(other++);
  }
  return found;
}

function lengthAt(lengths: readonly number[][], at: number, other: number): number {
  return lengths[at]?.[other] ?? 0;
}

/** Length of the longest common run of codes from each pair of places on. */
function commonLengths(from: readonly string[], now: readonly string[]): number[][] {
  const lengths = Array.from({ length: from.length + 1 }, () => new Array<number>(now.length + 1).fill(0));
  for (let at = from.length - 1; at >= 0; at--) {
    for (let other = now.length - 1; other >= 0; other--) {
      const row = lengths[at];
      if (row === undefined) continue;
      row[other] =
        from[at] === now[other]
          ? lengthAt(lengths, at + 1, other + 1) + 1
          : Math.max(lengthAt(lengths, at + 1, other), lengthAt(lengths, at, other + 1));
    }
  }
  return lengths;
}
