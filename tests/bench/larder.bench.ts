// Prints how large the compiled larder is, how long it takes to load and how long a food takes to find, each beside a floor that is
// measured in the same run: a busy machine slows both. Run it with `npm run bench:larder`.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { findFood } from '@retare/core';
import { larderFile, median, timeFinding, timeLoading } from './larder-times.ts';

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

for (const { name, words, finding, floor } of timeFinding(findFood)) {
  const micro = (time: number): string => `${(time * 1000).toFixed(2)} µs`;
  console.log(`find, ${name} (${words}): ${micro(finding)} (limit 20 µs)`);
  console.log(`  floor, one Map look-up: ${micro(floor)}; ratio ${(finding / floor).toFixed(0)}`);
}
