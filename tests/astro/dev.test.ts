import { type ChildProcess, spawn } from 'node:child_process';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copySite, type Site } from './site.ts';

let site: Site;
let server: ChildProcess;
let log = '';
let address = '';

const post = 'src/content/posts/everything.md';

/** Waits until the log says something after what it said before, or fails with all that it said. */
async function says(words: RegExp, after = 0, again?: () => void): Promise<void> {
  for (let waited = 0; waited < 60_000; waited += 100) {
    if (words.test(log.slice(after))) return;
    // A server that has just started may not watch its files yet: a save that it missed is made again.
    if (waited > 0 && waited % 5_000 === 0) again?.();
    await setTimeout(100);
  }
  throw new Error(`The server never says ${words}:\n${log}`);
}

beforeAll(async () => {
  site = copySite('dev', { MARKDOWN_PROCESSOR: 'unified' });
  site.edit(post, '- 2 cups reed flour', '- 100 g reed flour');
  const astro = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));
  server = spawn(process.execPath, [astro, 'dev', '--port', '0', '--host', '127.0.0.1'], {
    cwd: site.root,
    env: { ...process.env, MARKDOWN_PROCESSOR: 'unified', NODE_ENV: '', VITEST: '', NO_COLOR: '1', FORCE_COLOR: '0' },
  });
  for (const stream of [server.stdout, server.stderr]) stream?.on('data', (chunk) => (log += String(chunk)));
  await says(/http:\/\/127\.0\.0\.1:\d+\//);
  address = /http:\/\/127\.0\.0\.1:\d+\//.exec(log)?.[0] ?? '';
});

afterAll(() => server?.kill());

describe('a development server', () => {
  test('tells what the check finds and goes on', async () => {
    await says(/everything\.md:16:3 error unmeasurable \(us\)\n/);
    await says(/1 post, 16 amounts, 3 kitchens: 1 error, \d warnings?/);
    const page = await fetch(`${address}everything`);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('100 g reed flour');
  });

  test('checks a post again when it is saved', async () => {
    const before = log.length;
    site.edit(post, '- 100 g reed flour', '- 1 cup reed flour');
    await says(/1 post, 16 amounts, 3 kitchens: 0 errors/, before, () => site.edit(post, 'reed flour', 'reed flour'));
  });

  test('checks all posts again when the settings change', async () => {
    const before = log.length;
    site.edit('retare.yaml', '[us, uk, au]', '[us, uk]');
    await says(/1 post, 16 amounts, 2 kitchens: 0 errors/, before);
    expect(log.slice(before)).toContain('A page follows when its post is saved');
  });
});
