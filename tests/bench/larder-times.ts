import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { findFood } from '@retare/core';
import { builtInLarder } from '@retare/larder/built-in';

/** The compiled larder. */
export const larderFile = new URL('../../packages/larder/dist/larder.json', import.meta.url);

/** The middle value; of an even number, the upper of the two. */
export function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}

// Modules are there before the clock starts: it is the larder's data that is timed.
const program = `
  import { readFileSync } from 'node:fs';
  import { builtInLarder } from '@retare/larder/built-in';
  const file = new URL(process.argv[1]);
  const measured = (run) => { const from = performance.now(); run(); return performance.now() - from; };
  const larder = measured(() => builtInLarder());
  const floor = measured(() => JSON.parse(readFileSync(file, 'utf8')));
  console.log(JSON.stringify({ larder, floor }));
`;

/** Milliseconds of a first load of the larder, and of parsing the same file as one JSON text, each time in a new process. */
export function timeLoading(times: number): { larder: number; floor: number }[] {
  const root = fileURLToPath(new URL('../../packages/cli/', import.meta.url));
  return Array.from({ length: times }, () =>
    JSON.parse(
      execFileSync(process.execPath, ['--input-type=module', '--eval', program, larderFile.href], {
        cwd: root,
        encoding: 'utf8',
      }),
    ),
  );
}

/** Phrases that name a food of the larder, and phrases that name none: the second are looked up in every way there is. */
export const phrases = {
  hits: [
    'butter beans',
    'freshly chopped large butter beans',
    'swiss or rainbow chard',
    'jalepeno',
    'bellpepper',
    'whole raw chicken',
    'peeled and crushed ginger',
    'breast of chicken',
    'Fusilli pasta',
    'crème fraîche',
    'lemon and lime juice',
    'boneless, skinless chicken thighs',
  ],
  misses: [
    'gravel',
    'gravel of the moon',
    'finely chopped fresh moon gravel',
    'chocolate mint biscuits',
    'vegan cream cheese',
    'mango and avocado salsa',
    'very small crisp organic sea purslane or moon gravel of the season',
    'leftover sunday dinner',
    'smoked almond cheese spread',
    'harbour master rub',
    'a big bag of whatever the boat brought in this fine morning',
    'green chilli and coconut sambal',
  ],
} as const;

/** The time of one look-up of a food, and of one look-up in a plain Map, in milliseconds. */
export interface Finding {
  words: string;
  finding: number;
  floor: number;
}

/** Times each phrase and the floor in turns and keeps the least of them: a busy moment lengthens a time and never shortens it. */
export function timeFinding(find: typeof findFood, words: readonly string[], rounds = 60): Finding[] {
  const { foods } = builtInLarder();
  const plain = new Map(words.map((each) => [each, each.length]));
  // The first look-ups read the index of names, and the next ones let the engine see what is hot.
  for (let at = 0; at < 20_000; at += 1) find(words[at % words.length] ?? '', foods, 'us');
  return words.map((each) => {
    let [finding, floor] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let round = 0; round < rounds; round += 1) {
      finding = Math.min(
        finding,
        timeEach(100, () => find(each, foods, 'us')?.id.length ?? 0),
      );
      floor = Math.min(
        floor,
        timeEach(5000, () => plain.get(each) ?? 0),
      );
    }
    return { words: each, finding, floor };
  });
}

/** Adds the results up, so that no engine can leave the work out. */
function timeEach(times: number, run: () => number): number {
  let sum = 0;
  const from = performance.now();
  for (let at = 0; at < times; at += 1) sum += run();
  const time = (performance.now() - from) / times;
  if (sum < 0) throw new RangeError('A length is never below nothing');
  return time;
}

/** The value below which a share of the values lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}
