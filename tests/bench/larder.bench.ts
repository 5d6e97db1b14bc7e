// Prints how large the compiled larder is, how long it takes to load and how long a food takes to find, each beside a floor that is
// measured in the same run: a busy machine slows both. Run it with `npm run bench:larder`.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { findFood, readLine } from '@retare/core';
import { builtInLarder } from '@retare/larder/built-in';
import { hasCorpus, lineLabels, withoutMarker } from '../corpus/corpus.ts';
import { larderFile, median, phrases, quantile, timeFinding, timeLoading } from './larder-times.ts';

const bytes = readFileSync(larderFile);
const kilobytes = (size: number): string => `${(size / 1000).toFixed(1)} kB`;
const milliseconds = (time: number): string => `${time.toFixed(2)} ms`;

console.log(
  `size: ${kilobytes(bytes.length)}, ${kilobytes(gzipSync(bytes, { level: 9 }).length)} gzipped (limit 150 kB)`,
);

const loads = timeLoading(9);
const load = median(loads.map(({ larder }) => larder));
const parse = median(loads.map(({ floor }) => floor));
console.log(`load, cold, in a new process: ${milliseconds(load)} (limit 15 ms)`);
console.log(
  `  floor, JSON.parse of the same bytes in that process: ${milliseconds(parse)}; ratio ${(load / parse).toFixed(2)}`,
);

const micro = (time: number): string => `${(time * 1000).toFixed(2)} µs`;

function printFinding(name: string, words: readonly string[]): void {
  if (words.length === 0) return;
  const times = timeFinding(findFood, words);
  const ratios = times.map(({ finding, floor }) => finding / floor);
  const found = times.map(({ finding }) => finding);
  console.log(
    `find, ${name} (${words.length}): median ${micro(median(found))}, 95 % under ${micro(quantile(found, 0.95))} (limit 20 µs)`,
  );
  console.log(
    `  floor, one Map look-up: ${micro(median(times.map(({ floor }) => floor)))}; ratio ${median(ratios).toFixed(0)}, ${quantile(ratios, 0.95).toFixed(0)}`,
  );
}

printFinding('hits', phrases.hits);
printFinding('misses', phrases.misses);

// The words of real lines, where a collection of recipes lies beside the repository.
if (hasCorpus()) {
  const { foods } = builtInLarder();
  const foodsWritten = new Set(lineLabels().flatMap(({ text }) => readLine(withoutMarker(text)).food?.text ?? []));
  const isFound = (words: string): boolean => findFood(words, foods, 'us') !== null;
  printFinding('hits of real lines', [...foodsWritten].filter(isFound));
  printFinding(
    'misses of real lines',
    [...foodsWritten].filter((words) => !isFound(words)),
  );
}
