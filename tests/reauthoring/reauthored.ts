import { isRefusal, type Reauthored, reauthor } from '@retare/core';

/** What re-authoring comes to, with a version or without: a refusal fails the test. */
export function reauthoredOf(...asked: Parameters<typeof reauthor>): Reauthored {
  const result = reauthor(...asked);
  if (isRefusal(result)) throw new RangeError(result.kind);
  return result;
}
