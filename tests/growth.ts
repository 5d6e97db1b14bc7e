/** Milliseconds that this thread worked for a run: what else a busy machine does in the meantime does not count. */
export function worked(run: () => unknown): number {
  const before = process.threadCpuUsage();
  run();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000;
}

/** Below this a measurement is noise. */
const leastMilliseconds = 5;

/**
 * The shortest of some runs of each text. The texts take turns, so that a busy moment, which empties caches, does not fall on all the runs
 * of one of them.
 */
function shortestOfEach(read: (text: string) => unknown, texts: readonly string[], runs: number): number[] {
  const shortest = texts.map(() => Number.POSITIVE_INFINITY);
  for (let run = 0; run < runs; run += 1) {
    for (const [at, text] of texts.entries()) {
      shortest[at] = Math.min(
        shortest[at] ?? 0,
        worked(() => read(text)),
      );
    }
  }
  return shortest.map((time) => Math.max(leastMilliseconds, time));
}

const attempts = 4;

/**
 * By what factor the work grows with each further text, on average: the least of some attempts, ended by the first that is good enough.
 * Reading that is quadratic shows 4 each time for texts of twice the length.
 *
 * @param goodEnough A growth that ends the attempts.
 */
export function leastGrowth(
  read: (text: string) => unknown,
  texts: readonly string[],
  { runs, goodEnough }: { runs: number; goodEnough: number },
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let attempt = 0; attempt < attempts && least > goodEnough; attempt += 1) {
    const times = shortestOfEach(read, texts, runs);
    least = Math.min(least, ((times.at(-1) ?? 0) / (times[0] ?? 1)) ** (1 / (texts.length - 1)));
  }
  return least;
}
