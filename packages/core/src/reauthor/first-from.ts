/** Index of the first entry of an ascending list that is at least so large; the list's length where none is. */
export function firstFrom<Entry>(list: readonly Entry[], least: number, sizeOf: (entry: Entry) => number): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const entry = list[middle];
    if (entry !== undefined && sizeOf(entry) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
