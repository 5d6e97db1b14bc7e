import { readFileSync } from 'node:fs';

/** This package's version: what is rendered changes with it. */
export const version: string = (
  JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string }
).version;
