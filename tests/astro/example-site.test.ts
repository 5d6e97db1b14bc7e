import { globSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildExample, exampleRoot } from './example-site.ts';
import { type Ended, runAstro } from './site.ts';

let built: Ended;

beforeAll(async () => {
  built = await buildExample();
});

const pages = (): string[] => globSync('dist/**/*.html', { cwd: exampleRoot });
const gzipped = (text: string | Buffer): number => gzipSync(text, { level: 9 }).length;

describe('the example', () => {
  test('builds with all 14 posts, in five kitchens, without an error', () => {
    expect(built.code, built.text).toBe(0);
    expect(built.text).toMatch(/14 posts, \d{3} amounts, 5 kitchens: 0 errors, \d+ warnings?, \d+\.\d s/);
    expect(pages().filter((path) => path.startsWith('dist/posts/'))).toHaveLength(14);
  });

  test('has no finding in its own kitchen', () => {
    expect(built.text.match(/ (?:error|warning) [a-z-]+ \([^)]*\bus\b[^)]*\)/g) ?? []).toEqual([]);
  });

  test('shows every kitchen on every post but the preserve', () => {
    for (const path of pages().filter((each) => each.startsWith('dist/posts/'))) {
      const html = readFileSync(exampleRoot + path, 'utf8');
      const preserve = path.includes('jam');
      expect(html.match(/<retare-kitchens\b/g)?.length ?? 0, path).toBe(preserve ? 0 : 1);
      expect(html.match(/<option\b/g)?.length ?? 0, path).toBe(preserve ? 0 : 5);
      if (preserve) expect(html).not.toContain('data-retare=');
    }
  });

  test('has nothing on a page that a strict policy refuses', () => {
    for (const path of pages()) {
      const html = readFileSync(exampleRoot + path, 'utf8');
      expect(html, path).not.toMatch(/\s(?:on[a-z]+|style)=|<style|javascript:/);
      for (const script of html.match(/<script\b[^>]*>[^<]*/g) ?? [])
        expect(script).toMatch(/^<script type="module" src="\/_astro\/[^"]+">$/);
    }
  });
});

describe('what a reader’s browser loads', () => {
  test('is one script of less than 1.5 kB', () => {
    const scripts = globSync('dist/**/*.js', { cwd: exampleRoot });
    expect(scripts).toHaveLength(1);
    expect(gzipped(readFileSync(exampleRoot + scripts[0]))).toBeLessThan(1500);
  });

  test('is one stylesheet, of which ours are less than 1.5 kB', () => {
    const sheets = globSync('dist/**/*.css', { cwd: exampleRoot });
    expect(sheets).toHaveLength(1);
    const sheet = readFileSync(exampleRoot + sheets[0], 'utf8');
    const layer = sheet.slice(sheet.indexOf('@layer retare{'), sheet.indexOf(':root{color-scheme'));
    expect(layer).toContain('[data-retare~=au]');
    expect(gzipped(layer)).toBeLessThan(1500);
  });

  test('is less than 1.5 kB of style where a page takes the ready-made file', () => {
    const file = new URL(import.meta.resolve('remark-retare/reader.css'));
    expect(gzipped(readFileSync(file))).toBeLessThan(1500);
  });
});

describe('the example’s three drafts', () => {
  const drafts = {
    'chicken-and-beans-nobody-can-shop-for': [
      '13:3 error unbuyable (us)',
      '14:3 error unbuyable (us)',
      '15:3 error unbuyable (us)',
      '16:3 error unbuyable (us)',
    ],
    'chicken-taken-out-too-soon': ['22:63 error underdone (us)'],
    'pancakes-nobody-can-measure': [
      '13:3 error unmeasurable (us)',
      '14:3 error unmeasurable (us)',
      '15:3 error unmeasurable (us)',
      '16:3 error unmeasurable (us)',
      '17:3 error unmeasurable (us)',
    ],
  };

  test('stop its build with exit code 1 and exactly their own errors, and no page is written', async () => {
    const { code, text } = await runAstro(exampleRoot, ['build', '--config', 'astro.failing.config.mjs']);
    expect(code, text).toBe(1);
    const expected = Object.entries(drafts).flatMap(([name, places]) =>
      places.map((place) => `failing/${name}.md:${place}`),
    );
    expect(text.split('\n').filter((line) => / error /.test(line) && line.includes('.md:'))).toEqual(expected);
    expect(text).toMatch(/17 posts, .*: 10 errors, .*No page was written/);
    expect(globSync('dist-failing/**/*.html', { cwd: exampleRoot })).toEqual([]);
  });
});
