import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '@retare/cli';
import { afterAll } from 'vitest';

/** A folder that goes when the tests of a file are done. */
export function testFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'retare-draft-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  return folder;
}

/** What a run of the command gave, and what the post holds after it. */
export interface Run {
  code: number;
  out: string;
  err: string;
  after: string;
}

/** Runs the command on a post of its own. */
export async function runOn(folder: string, post: string, args: readonly string[]): Promise<Run> {
  const path = join(folder, 'post.md');
  writeFileSync(path, post);
  const written = { out: '', err: '' };
  const output = {
    out: (text: string) => {
      written.out += text;
    },
    err: (text: string) => {
      written.err += text;
    },
    color: false,
    cwd: folder,
  };
  const [command = '', ...others] = args;
  const code = await run([command, 'post.md', ...others], output);
  return { code, ...written, after: readFileSync(path, 'utf8') };
}
