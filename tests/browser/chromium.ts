import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const usual = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/snap/bin/chromium'];

/** A Chromium on this machine: `CHROMIUM`, one that the system has, or the one that playwright-core installed; else undefined. */
export function chromiumPath(): string | undefined {
  return [process.env.CHROMIUM, ...usual, chromium.executablePath()].find(
    (path) => path !== undefined && existsSync(path),
  );
}

/** Starts it headless, speaking to this machine alone. */
export async function launchChromium(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === undefined) throw new Error('No Chromium: run `node tests/browser/install-chromium.ts` first.');
  const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'];
  return chromium.launch({ executablePath, args: [...args, '--disable-component-update', '--disable-sync'] });
}
