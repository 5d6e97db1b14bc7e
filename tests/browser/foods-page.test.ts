import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium } from './chromium.ts';

const address = new URL('../../packages/larder/dist/foods.html', import.meta.url).href;
let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function open(width: number, javaScriptEnabled = true): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 800 }, javaScriptEnabled });
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

describe.for([360, 1280])('the page of foods, %i px wide', (width) => {
  test('does not scroll sideways', async () => {
    const page = await open(width);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });

  test('has its head and a food without a fault that axe finds', async () => {
    const page = await open(width);
    await page.fill('#filter', 'butter beans');
    // Nine hundred articles are built alike: one is looked at.
    await page.evaluate(() => {
      for (const hidden of document.querySelectorAll('[hidden]')) hidden.remove();
    });
    await page.addScriptTag({ content: axe.source });
    const { violations } = await page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run());
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  });
});

describe('the filter of the page of foods', () => {
  test('leaves the foods that have the words', async () => {
    const page = await open(360);
    await page.fill('#filter', 'courgette yellow');
    expect(await page.locator('article:visible h3').allTextContents()).toEqual(['yellow squashes']);
    expect(await page.locator('output').textContent()).toBe('1 food');
    // The letters lead to foods that are hidden, and would push what was found off a phone's screen.
    expect(await page.locator('nav:visible').count()).toBe(0);
  });

  test('is not there without script, and every food is', async () => {
    const page = await open(360, false);
    expect(await page.locator('.filter:visible').count()).toBe(0);
    expect(await page.locator('article:visible').count()).toBeGreaterThan(800);
  });
});
