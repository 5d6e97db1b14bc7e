import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { buildExample, exampleRoot } from '../astro/example-site.ts';
import { launchChromium } from './chromium.ts';
import { type Served, serve } from './serve.ts';

let browser: Browser;
let served: Served;
const opened: Page[] = [];
/** What a page's console said, and what its policy refused. */
const complaints: string[] = [];

const beans = '/posts/butter-beans-baked-with-cream-and-greens/';
const loaf = '/posts/the-dock-loaf/';
const control = 'retare-kitchens select';

beforeAll(async () => {
  const { code, text } = await buildExample();
  if (code !== 0) throw new Error(`The example does not build:\n${text}`);
  [browser, served] = await Promise.all([launchChromium(), serve(`${exampleRoot}dist`)]);
});

afterEach(async () => {
  await Promise.all(opened.splice(0).map((page) => page.context().close()));
  expect(complaints.splice(0)).toEqual([]);
});

afterAll(async () => {
  await browser?.close();
  await served?.close();
});

/** A reader who has never been here, in the United States unless options say otherwise. */
async function reader(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ locale: 'en-US', ...options });
  const page = await context.newPage();
  opened.push(page);
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(served.origin + path);
  return page;
}

/** What the reader sees of the recipe, spaces evened. */
async function seen(page: Page): Promise<string> {
  return (await page.locator('main').allInnerTexts()).join(' ').replace(/\s+/g, ' ');
}

/** A few words of the beans by kitchen: what is bought, the oven, and a share. */
const words = {
  us: ['2 (15-oz) cans butter beans', '400°F', 'stir in ½ cup of the cream'],
  uk: ['2 × 400 g tins butter beans', '200°C/180°C fan/gas 6', 'rewritten by the author, and cooked on 1 May 2026'],
  au: ['2 × 400 g cans butter beans', 'For an Australian kitchen'],
};

async function showsOnly(page: Page, kitchen: keyof typeof words): Promise<void> {
  const text = await seen(page);
  for (const [id, expected] of Object.entries(words)) {
    for (const each of expected) {
      if (id === kitchen) expect(text).toContain(each);
      else if (!words[kitchen].some((own) => own.includes(each))) expect(text).not.toContain(each);
    }
  }
}

describe('a reader without script', () => {
  const javaScriptEnabled = false;

  test('reads the native amounts first', async () => showsOnly(await reader(beans, { javaScriptEnabled }), 'us'));

  test('chooses another kitchen, and every amount follows', async () => {
    const page = await reader(beans, { javaScriptEnabled });
    await page.selectOption(control, 'uk');
    await showsOnly(page, 'uk');
    await page.selectOption(control, 'au');
    await showsOnly(page, 'au');
    await page.selectOption(control, 'us');
    await showsOnly(page, 'us');
  });

  test('chooses with the keyboard alone', async () => {
    const page = await reader(beans, { javaScriptEnabled });
    await tabTo(page, control);
    await page.keyboard.type('United K');
    await showsOnly(page, 'uk');
  });
});

/** Presses the tabulator until something has the focus. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    await page.keyboard.press('Tab');
    if (await page.locator(selector).evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`The tabulator never comes to ${selector}.`);
}

describe('a reader’s choice', () => {
  test('with the keyboard is remembered after a reload and on another page', async () => {
    const page = await reader(beans);
    await showsOnly(page, 'us');
    await tabTo(page, control);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await showsOnly(page, 'uk');
    await page.reload();
    await showsOnly(page, 'uk');
    await page.goto(served.origin + loaf);
    expect(await page.inputValue(control)).toBe('uk');
    expect(await seen(page)).toContain('1 × 7 g sachet fast-action dried yeast');
  });

  test('can come with a link, and the next choice goes before it', async () => {
    const page = await reader(`${beans}?kitchen=uk`);
    await showsOnly(page, 'uk');
    await page.selectOption(control, 'au');
    expect(page.url()).toBe(served.origin + beans);
    await page.reload();
    await showsOnly(page, 'au');
  });

  test('in a link goes before what is remembered, and does not replace it', async () => {
    const page = await reader(beans);
    await page.selectOption(control, 'au');
    await page.goto(`${served.origin}${beans}?kitchen=uk`);
    await showsOnly(page, 'uk');
    await page.goto(served.origin + beans);
    await showsOnly(page, 'au');
  });

  test.each(['gb', '', '"]:checked', '__proto__'])(
    'of a kitchen that there is not, `%s`, is passed over',
    async (kitchen) => {
      await showsOnly(await reader(`${beans}?kitchen=${encodeURIComponent(kitchen)}`), 'us');
    },
  );

  test('that a stranger left in the storage is passed over', async () => {
    const page = await reader(beans);
    await page.evaluate(() => localStorage.setItem('retare-kitchen', '<b>uk</b>'));
    await page.reload();
    await showsOnly(page, 'us');
  });

  test('holds for the page where the storage is shut', async () => {
    const page = await reader('/about/');
    await page.addInitScript(() => {
      const shut = {
        get: () => {
          throw new DOMException('shut', 'SecurityError');
        },
      };
      Object.defineProperty(window, 'localStorage', shut);
    });
    await page.goto(served.origin + beans);
    await page.selectOption(control, 'uk');
    await showsOnly(page, 'uk');
    await page.reload();
    await showsOnly(page, 'us');
  });
});

describe('a first guess', () => {
  test.each([
    ['en-GB', 'uk'],
    ['en-AU', 'au'],
    ['fr-CA', 'ca'],
    ['de-DE', 'eu'],
    ['en-US', 'us'],
    ['en', 'us'],
    ['pt-BR', 'us'],
  ])('for a browser that speaks %s is %s', async (locale, kitchen) => {
    expect(await (await reader(beans, { locale })).inputValue(control)).toBe(kitchen);
  });

  test('asks nobody: the page loads from its own site alone', async () => {
    const page = await reader('/about/', { locale: 'en-GB' });
    const hosts = new Set<string>();
    page.on('request', (request) => hosts.add(new URL(request.url()).origin));
    await page.goto(served.origin + beans);
    await page.waitForLoadState('networkidle');
    expect([...hosts]).toEqual([served.origin]);
  });

  test('gives way to a choice', async () => {
    const page = await reader(beans, { locale: 'en-GB' });
    await page.selectOption(control, 'us');
    await page.reload();
    await showsOnly(page, 'us');
  });
});

describe('on paper', () => {
  test('stands the chosen kitchen, and no control', async () => {
    const page = await reader(beans);
    await page.selectOption(control, 'uk');
    await page.emulateMedia({ media: 'print' });
    await showsOnly(page, 'uk');
    expect(await page.locator(control).isVisible()).toBe(false);
    expect(await page.locator('.retare-working:visible').count()).toBe(0);
  });
});

describe('what may be doubted', () => {
  test('can be opened with the keyboard: the exact amount, what to buy and what is left', async () => {
    const page = await reader(`${beans}?kitchen=eu`);
    await tabTo(page, '.retare-working[data-retare="eu"] summary');
    expect(await seen(page)).not.toContain('which leaves');
    await page.keyboard.press('Enter');
    const opened = (await page.locator('.retare-working[data-retare="eu"]').allInnerTexts()).join(' ');
    expect(opened).toMatch(/1 cup, exactly 236\.6 ml, became 240 ml, 1\.4 % more/);
    expect(opened).toMatch(/buy 2 × 400 g tins/);
    expect(opened).toMatch(/which leaves \d+ g/);
  });
});

describe('on a phone 360 pixels wide', () => {
  const viewport = { width: 360, height: 740 };

  test.each([beans, '/posts/sour-cream-crumb-cake/', '/posts/smoked-trout-and-cod-chowder/'])(
    'nothing on %s is wider than the screen, whatever the kitchen',
    async (path) => {
      const page = await reader(path, { viewport, isMobile: true, hasTouch: true });
      for (const kitchen of ['us', 'ca', 'uk', 'eu', 'au']) {
        await page.selectOption(control, kitchen);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
        });
        expect(await page.evaluate(() => document.documentElement.scrollWidth), kitchen).toBe(360);
      }
    },
  );

  test('the control is large enough for a thumb', async () => {
    const box = await (await reader(beans, { viewport })).locator(control).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(44);
    expect(box?.width).toBeGreaterThanOrEqual(44);
  });

  test('the control keeps its size with text twice as large', async () => {
    const page = await reader(beans, { viewport });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });
});

describe('axe finds nothing wrong', () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

  test.each([
    ['/', 'light'],
    [`${beans}?kitchen=uk`, 'light'],
    [`${beans}?kitchen=ca`, 'dark'],
    ['/posts/sour-cream-crumb-cake/?kitchen=eu', 'light'],
    ['/posts/blackberry-jam-for-the-refrigerator/', 'dark'],
  ] as const)('on %s, %s', async (path, colorScheme) => {
    const page = await reader(path, { colorScheme });
    for (const summary of await page.locator('summary:visible').all()) await summary.click();
    await page.evaluate(axe);
    const { violations, passes } = await page.evaluate(() =>
      (globalThis as unknown as { axe: { run(): Promise<AxeResult> } }).axe.run(),
    );
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    expect(passes.length).toBeGreaterThan(20);
  });
});

interface AxeResult {
  violations: { id: string; nodes: { html: string }[] }[];
  passes: unknown[];
}
