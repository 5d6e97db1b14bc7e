// Finds a Chromium for the browser tests, or installs one, or says what to run.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromiumPath } from './chromium.ts';

const download: readonly (readonly string[])[] = [['npx', 'playwright-core', 'install', 'chromium']];
const debian: readonly (readonly string[])[] = [
  ['apt-get', 'update'],
  ['apt-get', 'install', '--yes', '--no-install-recommends', 'chromium'],
];
// Root on a Debian machine, a container or CI mostly, gets the system's own; everybody else playwright's.
const isDebianRoot = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
const attempts = isDebianRoot ? [...debian, ...download] : download;

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
