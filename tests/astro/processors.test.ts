import { globSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium } from '../browser/chromium.ts';
import { copySite, type Ended, type Site } from './site.ts';

const processors = ['unified', 'default'] as const;
const kitchens = ['us', 'uk', 'au'] as const;

/** What each kitchen's reader sees of a built page. */
type Seen = Record<(typeof kitchens)[number], string>;

const sites = {} as Record<(typeof processors)[number], { site: Site; first: Ended; pages: Record<string, string> }>;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  await Promise.all(
    processors.map(async (processor) => {
      const site = copySite(`processor-${processor}`, { MARKDOWN_PROCESSOR: processor });
      const first = await site.astro('build');
      sites[processor] = { site, first, pages: site.pages() };
    }),
  );
  browser = await launchChromium();
  page = await browser.newPage({ javaScriptEnabled: false });
});

afterAll(() => browser?.close());

async function seen(html: string): Promise<Seen> {
  await page.setContent(html);
  const texts = {} as Seen;
  for (const kitchen of kitchens) {
    await page.selectOption('select', kitchen);
    texts[kitchen] = (await page.locator('main').allInnerTexts()).join(' ').replace(/\s+/g, ' ').trim();
  }
  return texts;
}

const everything = 'dist/everything/index.html';
const htmlOf = (processor: (typeof processors)[number], path = everything): string =>
  sites[processor].pages[path] ?? '';

describe.each(processors)('with the %s Markdown processor', (processor) => {
  test('the site builds and the check says its sum once', () => {
    const { code, text } = sites[processor].first;
    expect(code, text).toBe(0);
    expect(text.match(/1 post, \d+ amounts, 3 kitchens: 0 errors, \d+ warnings?, \d+\.\d s/g)).toHaveLength(1);
  });

  test('each kitchen reads its own amounts, settings and pans', async () => {
    const { us, uk, au } = await seen(htmlOf(processor));
    expect(us).toContain('1 cup whole milk, see the note 2 cups reed flour *');
    expect(us).toContain('Heat it to 350°F and butter a 8×8 in dish. Warm ½ cup of the milk, stir, and wait.');
    expect(uk).toContain('240 ml whole milk 240 g milled reed 225 g kale');
    expect(uk).toContain('Heat it to 180°C/160°C fan/gas 4 and butter a 20 × 20 cm dish. Warm 120 ml of the milk');
    expect(au).toContain('240 ml whole milk, see the note 240 g reed flour *');
    expect(au).toContain('Heat it to 180°C/160°C fan and');
  });

  test('amounts in prose, a quotation, a table and a footnote follow', async () => {
    const { us, uk } = await seen(htmlOf(processor));
    for (const words of [
      'runs at 400°F most',
      '2 in of water',
      'the middle 160°F',
      'Chill it to 40°F.',
      'At 110°F it wilts.',
    ])
      expect(us).toContain(words);
    for (const words of [
      'runs at 200°C/180°C fan/gas 6 most',
      '5 cm of water',
      'the middle 72°C (hold 2 min)',
      'At 43°C it',
    ])
      expect(uk).toContain(words);
  });

  test('what is not ours reads as it was written', async () => {
    const { us } = await seen(htmlOf(processor));
    expect(us).toContain('Supper is at 6:30, “early”, and the ratio is 2:1. Serves:four.');
    expect(us).toContain('in the :note[ditch].');
    expect(us).toContain('10:30 a `:pan` in code');
    const plain = htmlOf(processor, 'dist/plain/index.html');
    expect(plain).toContain('<p>Breakfast at 10:30. Serves:four, a ratio of 2:1, and :tada: for luck. “Quoted”.</p>');
    expect(plain).toContain('<p>::note[for another plugin]</p>');
    expect(plain).toMatch(/<p>:::aside\nNot ours.\n:::<\/p>/);
  });

  test('no mark of an annotation is left on the page', async () => {
    for (const text of Object.values(await seen(htmlOf(processor))))
      expect(text).not.toMatch(/:::|:(?:oven|amount|temp|length)\[/);
  });

  test('headings in a block have ids and are listed, pictures and links of a line are the site’s own', () => {
    const html = htmlOf(processor);
    expect(html).toContain('data-headings="first-the-oven after footnote-label"');
    expect(html).toContain('<h3 id="first-the-oven">First, the oven</h3>');
    expect(html.match(/<img [^>]*src="\/_astro\/reed\.[^"]*"/g)).toHaveLength(2);
    expect(html.match(/<a href="https:\/\/example\.com\/note">the note<\/a>/g)).toHaveLength(3);
  });

  test('kitchens that read the same share one text', () => {
    expect(htmlOf(processor)).toContain('<span data-retare="uk au">5 cm</span>');
    expect(htmlOf(processor)).toContain('<li>salt, to taste</li>');
  });

  test('the script is one file of its own, in no page', () => {
    const { site } = sites[processor];
    const scripts = globSync('dist/**/*.js', { cwd: site.root });
    expect(scripts).toHaveLength(1);
    for (const html of Object.values(sites[processor].pages)) {
      expect(html.match(/<script\b/g)).toHaveLength(1);
      expect(html).toContain(`<script type="module" src="/${scripts[0]?.replace('dist/', '')}"></script>`);
      expect(html).not.toMatch(/\son[a-z]+=|<style[^>]*>[^<]*@import/);
    }
  });
});

test('both processors say the same to every kitchen', async () => {
  expect(await seen(htmlOf('unified'))).toEqual(await seen(htmlOf('default')));
});

test.each(processors)(
  'a page in the cache of the %s processor follows a change of the site’s larder',
  async (processor) => {
    const { site } = sites[processor];
    expect(site.read(everything)).toContain('240 g reed flour');
    site.edit('larder.yaml', 'grams: 120', 'grams: 150');
    const { code, text } = await site.astro('build');
    expect(code, text).toBe(0);
    expect(site.read(everything)).toContain('300 g reed flour');
  },
);
