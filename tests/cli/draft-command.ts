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
export async function runOn(folder: string, post: string | Uint8Array, args: readonly string[]): Promise<Run> {
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

/** The cells of every row of the tables that a draft prints, what was broken between words put together again. */
export function rowsIn(out: string): string[][] {
  const lines = out.split('\n');
  return lines.flatMap((line, at) => (/^-+(?: {2}-+)+$/u.test(line) ? rowsBelow(line, lines.slice(at + 1)) : []));
}

function rowsBelow(rule: string, lines: readonly string[]): string[][] {
  const columns = [...rule.matchAll(/-+/gu)].map(({ index, 0: dashes }) => [index, index + dashes.length] as const);
  const end = lines.indexOf('');
  const rows: string[][] = [];
  for (const line of lines.slice(0, end < 0 ? lines.length : end)) {
    const cells = columns.map(([from, to]) => line.slice(from, to).trimEnd());
    const last = rows.at(-1);
    if (last !== undefined && cells.every((cell) => cell === '' || cell.startsWith(' ')))
      rows[rows.length - 1] = last.map((cell, at) => cell + (cells[at] ?? ''));
    else rows.push(cells);
  }
  return rows;
}
