import { spawn } from 'node:child_process';
import { cpSync, globSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What a command said and how it ended. */
export interface Ended {
  code: number | null;
  /** Both streams, as they came, without colours. */
  text: string;
}

/** A site of its own to build and to change: a copy of a fixture, in a folder from which the workspace's packages are found. */
export interface Site {
  root: string;
  read(path: string): string;
  write(path: string, text: string): void;
  /** Replaces words of a file that must be there. */
  edit(path: string, from: string, to: string): void;
  /** HTML files in `dist`, by path; none where there is no `dist`. */
  pages(): Record<string, string>;
  astro(...args: string[]): Promise<Ended>;
}

const astroBin = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));

/** Runs Astro's command as a user does. */
export function runAstro(root: string, args: readonly string[], env: Record<string, string> = {}): Promise<Ended> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [astroBin, ...args], {
      cwd: root,
      env: {
        ...process.env,
        NODE_ENV: '',
        VITEST: '',
        NO_COLOR: '1',
        FORCE_COLOR: '0',
        ASTRO_TELEMETRY_DISABLED: '1',
        ...env,
      },
    });
    let text = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => (text += String(chunk)));
    child.on('error', failed);
    child.on('close', (code) => done({ code, text }));
  });
}

/** Copies the fixture `site` under a name of its own. */
export function copySite(name: string, env: Record<string, string> = {}): Site {
  const root = fileURLToPath(new URL(`./sites/${name}/`, import.meta.url));
  rmSync(root, { recursive: true, force: true });
  cpSync(new URL('./fixtures/site/', import.meta.url), root, { recursive: true });
  const read = (path: string): string => readFileSync(root + path, 'utf8');
  const write = (path: string, text: string): void => writeFileSync(root + path, text);
  return {
    root,
    read,
    write,
    edit(path, from, to) {
      const text = read(path);
      if (!text.includes(from)) throw new Error(`${path} has no ${from}`);
      write(path, text.replace(from, to));
    },
    pages: () => Object.fromEntries(globSync('dist/**/*.html', { cwd: root }).map((path) => [path, read(path)])),
    astro: (...args) => runAstro(root, args, env),
  };
}
