// Finds a Chromium for the browser tests, or installs one, or says what to run.
import { spawnSync } from 'node:child_process';
import { chromiumPath } from './chromium.ts';

const attempts: readonly (readonly string[])[] = [
  ['npx', 'playwright-core', 'install', 'chromium'],
  ['apt-get', 'update'],
  ['apt-get', 'install', '--yes', '--no-install-recommends', 'chromium'],
];

for (const [command = '', ...args] of attempts) {
  if (chromiumPath() !== undefined) break;
  console.log(`No Chromium yet: ${[command, ...args].join(' ')}`);
  spawnSync(command, args, { stdio: ['ignore', 'ignore', 'inherit'], timeout: 600_000 });
}

if (chromiumPath() === undefined) {
  console.error(
    'The browser tests need a Chromium and none could be installed. Run `sudo apt-get install chromium`, or ' +
      '`npx playwright-core install chromium`, or set CHROMIUM to the path of one; then run `npm test` again.',
  );
  process.exitCode = 1;
}
