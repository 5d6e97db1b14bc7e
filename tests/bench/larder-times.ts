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

const phrases = [
  { name: 'a name', words: 'butter beans' },
  { name: 'a name among words that change nothing', words: 'freshly chopped large butter beans' },
  { name: 'a shared head', words: 'swiss or rainbow chard' },
  { name: 'a slip of the pen', words: 'jalepeno' },
  { name: 'no food', words: 'gravel of the moon' },
] as const;

/** Milliseconds of finding one food, and of one look-up in a plain Map, the middle of several rounds. */
export function timeFinding(find: typeof findFood) {
  const { foods } = builtInLarder();
  const plain = new Map([...foods.keys()].map((id) => [id.replaceAll('-', ' '), id]));
  // The first look-ups read the index of names.
  for (const words of ['butter', 'jalepeno']) find(words, foods, 'us');
  return phrases.map(({ name, words }) => ({
    name,
    words,
    finding: each(2000, () => find(words, foods, 'us')),
    floor: each(200_000, () => plain.get(words)),
  }));
}

function each(times: number, run: () => unknown): number {
  const rounds = Array.from({ length: 7 }, () => {
    const from = performance.now();
    for (let at = 0; at < times; at += 1) run();
    return (performance.now() - from) / times;
  });
  return median(rounds);
}
