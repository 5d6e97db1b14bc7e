import { beforeAll, describe, expect, test } from 'vitest';
import { copySite, type Ended, type Site } from './site.ts';

let site: Site;

/** How many posts Astro rendered so far. */
const rendered = (): number => site.read('runs.txt').split('\n').length - 1;

/** Each place that a log names, with what stands behind it on the line. */
const findings = (text: string): string[] =>
  text.split('\n').filter((line) => /^src\/.*:\d+:\d+ (?:error|warning) /.test(line));

const post = 'src/content/posts/everything.md';
const stopped = [`${post}:23:1 warning missing-from`, `${post}:16:3 error unmeasurable (us)`];

beforeAll(async () => {
  site = copySite('build', { MARKDOWN_PROCESSOR: 'unified' });
  const { code, text } = await site.astro('build');
  expect(code, text).toBe(0);
});

// The tests are steps in the life of one site.
describe('a build', () => {
  test('renders no post again where nothing changed, and is checked all the same', async () => {
    expect(rendered()).toBe(2);
    const pages = site.pages();
    const { code, text } = await site.astro('build');
    expect([code, rendered()]).toEqual([0, 2]);
    expect(text).toMatch(/1 post, 16 amounts, 3 kitchens: 0 errors, 1 warning, \d+\.\d s/);
    expect(site.pages()).toEqual(pages);
  });

  test('renders all posts again where the settings changed', async () => {
    site.edit('retare.yaml', '[us, uk, au]', '[us, uk]');
    expect((await site.astro('build')).code).toBe(0);
    expect(rendered()).toBe(4);
    expect(site.read('dist/everything/index.html')).not.toContain('Australia');
  });

  describe('of a post that cannot be cooked', () => {
    let cold: Ended;
    let pages: Record<string, string>;

    beforeAll(async () => {
      pages = site.pages();
      site.edit(post, '- 2 cups reed flour', '- 100 g reed flour');
      cold = await site.astro('build');
    });

    test('stops with exit code 1', () => expect(cold.code).toBe(1));

    test('says every finding once, with file, line and column, errors last', () => {
      expect(findings(cold.text)).toEqual(stopped);
      expect(cold.text.match(/A US kitchen has no scale/g)).toHaveLength(1);
    });

    test('ends on the sum, on what was not written and on what to do, without a stack', () => {
      expect(cold.text.trimEnd().split('\n').at(-1)).toMatch(
        /^1 post, 16 amounts, 2 kitchens: 1 error, 1 warning, \d+\.\d s\. No page was written: correct the errors above, or excuse them with a reason$/,
      );
      expect(cold.text).not.toMatch(/Stack trace|node_modules/);
    });

    test('leaves the pages that stand there as they were', () => expect(site.pages()).toEqual(pages));

    test('stops again from the cache, where no plugin runs', async () => {
      const before = rendered();
      const warm = await site.astro('build');
      expect([warm.code, rendered()]).toEqual([1, before]);
      expect(findings(warm.text)).toEqual(stopped);
    });

    test('goes through where the author gives a reason', async () => {
      site.edit(post, '- 100 g reed flour', '<!-- retare ignore unmeasurable: a heaped cup -->\n\n- 100 g reed flour');
      const { code, text } = await site.astro('build');
      expect(code, text).toBe(0);
    });
  });

  test('stops at settings that cannot be read, with their place', async () => {
    site.edit('retare.yaml', '[us, uk]', '[us, gb]');
    const { code, text } = await site.astro('build');
    expect(code).toBe(1);
    expect(text).toMatch(/^retare\.yaml:1:16 .*`gb`/m);
    expect(text).not.toMatch(/Stack trace|node_modules/);
  });
});
