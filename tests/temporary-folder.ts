import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Gives a run one temporary folder, in which whatever the tests and the browser write is gone when it ends. */
export default function setup(): () => void {
  const before = process.env.TMPDIR;
  const folder = mkdtempSync(join(tmpdir(), 'retare-tests-'));
  // Workers are started after this, and `os.tmpdir()` reads it.
  process.env.TMPDIR = folder;
  return () => {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
    rmSync(folder, { recursive: true, force: true });
  };
}
