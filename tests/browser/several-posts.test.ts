import { globSync, readFileSync } from 'node:fs';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildExample, exampleRoot } from '../astro/example-site.ts';
import { launchChromium } from './chromium.ts';
import { type Served, serve } from './serve.ts';

let browser: Browser;
let served: Served;

/** What stands in the example's page of a post, and what its head loads. */
function partsOf(post: string): { head: string; essay: string } {
  const html = readFileSync(`${exampleRoot}dist/posts/${post}/index.html`, 'utf8');
  const head = (html.match(/<link rel="stylesheet"[^>]*>|<script type="module"[^>]*><\/script>/g) ?? []).join('');
  return { head, essay: /<div class="essay">([\s\S]*?)<\/div>\s*<\/article>/.exec(html)?.[1] ?? '' };
}

beforeAll(async () => {
  const { code, text } = await buildExample();
  if (code !== 0) throw new Error(`The example does not build:\n${text}`);
  const beans = partsOf('butter-beans-baked-with-cream-and-greens');
  const loaf = partsOf('the-dock-loaf');
  const again = beans.essay.replace(
    /<retare-kitchens>([\s\S]*?)<\/retare-kitchens>/,
    '$&<retare-kitchens data-again>$1</retare-kitchens>',
  );
  const page = (head: string, ...posts: string[]): string =>
    `<!doctype html><html lang="en"><head><title>Posts</title>${head}</head><body>${posts.join('')}</body></html>`;
  const articles = [`<article id="beans">${beans.essay}</article>`, `<article id="loaf">${loaf.essay}</article>`];
  // What a site's own style may well say of the elements that ours are.
  const overruling = '<link rel="stylesheet" href="/site.css">';
  [browser, served] = await Promise.all([
    launchChromium(),
    serve(`${exampleRoot}dist`, {
      '/blog/': page(beans.head, ...articles),
      '/again/': page(beans.head, `<article id="beans"><blockquote>${again}</blockquote></article>`),
      '/feed/': page(beans.head, articles[0]?.replace(/<retare-kitchens>[\s\S]*?<\/retare-kitchens>/, '') ?? ''),
      '/overruled/': page(beans.head + overruling, articles[0] ?? ''),
      '/site.css': 'article div, article span, article p { display: block }',
    }),
  ]);
  expect(globSync('dist/_astro/*.css', { cwd: exampleRoot })).toHaveLength(1);
});

afterAll(async () => {
  await browser?.close();
  await served?.close();
});

async function reader(path: string, javaScriptEnabled: boolean): Promise<Page> {
  const page = await browser.newPage({ javaScriptEnabled, locale: 'en-US' });
  await page.goto(served.origin + path);
  return page;
}

const words = async (part: Locator): Promise<string> => (await part.allInnerTexts()).join(' ').replace(/\s+/g, ' ');

describe('a page of several posts', () => {
  test('keeps each to its own control where there is no script', async () => {
    const page = await reader('/blog/', false);
    await page.selectOption('#beans select', 'uk');
    expect(await words(page.locator('#beans'))).toContain('2 × 400 g tins butter beans');
    expect(await words(page.locator('#beans'))).not.toContain('2 (15-oz) cans butter beans');
    expect(await words(page.locator('#loaf'))).toContain('1 (¼-oz) envelope instant yeast');
    expect(await words(page.locator('#loaf'))).not.toContain('fast-action dried yeast');
  });

  test('keeps all controls together with it', async () => {
    const page = await reader('/blog/', true);
    await page.selectOption('#beans select', 'uk');
    expect(await page.inputValue('#loaf select')).toBe('uk');
    expect(await words(page.locator('#loaf'))).toContain('1 × 7 g sachet fast-action dried yeast');
  });
});

describe('a second control of a post', () => {
  test('is hidden where no script keeps it with the first, which may stand deep in the page', async () => {
    const page = await reader('/again/', false);
    expect(await page.locator('select:visible').count()).toBe(1);
    await page.locator('select:visible').selectOption('uk');
    expect(await words(page.locator('#beans'))).toContain('2 × 400 g tins butter beans');
    expect(await words(page.locator('#beans'))).not.toContain('2 (15-oz) cans');
  });

  test('goes with the first where a script does', async () => {
    const page = await reader('/again/', true);
    expect(await page.locator('select:visible').count()).toBe(2);
    await page.locator('select').nth(1).selectOption('au');
    expect(await page.locator('select').nth(0).inputValue()).toBe('au');
    expect(await words(page.locator('#beans'))).toContain('2 × 400 g cans butter beans');
    expect(await words(page.locator('#beans'))).not.toContain('2 (15-oz) cans');
  });
});

test('without a control the native amounts alone are shown', async () => {
  const text = await words((await reader('/feed/', true)).locator('#beans'));
  expect(text).toContain('2 (15-oz) cans butter beans');
  expect(text).not.toMatch(/400 g|225 ml/);
});

test('a rule of the site’s own style shows no second text', async () => {
  const text = await words((await reader('/overruled/', true)).locator('#beans'));
  expect(text).toContain('2 (15-oz) cans butter beans');
  expect(text).not.toMatch(/400 g|225 ml/);
});
