import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/**
 * Writes a file as a whole or not at all: into a new file beside it, which then takes its name. Its mode is kept, and a link to it stays
 * one.
 *
 * @throws {Error} Where the folder or the file cannot be written; then the file is as it was.
 */
export function writeFile(named: string, text: string): void {
  const path = realpathSync(named);
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.retare`);
  try {
    writeFileSync(beside, text, { mode: statSync(path).mode });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
