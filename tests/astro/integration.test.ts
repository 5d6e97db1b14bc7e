import { pathToFileURL } from 'node:url';
import { unified } from '@astrojs/markdown-remark';
import retare, { type RetareOptions } from '@retare/astro';
import { describe, expect, test } from 'vitest';
import { copySite, type Site } from './site.ts';

type Hook = (given: unknown) => unknown;

/** Runs the integration's hooks as Astro does, without Astro. */
function started(site: Site, processor: unknown, options: RetareOptions = {}) {
  const hooks = retare(options).hooks as unknown as Record<string, Hook>;
  const said: string[] = [];
  const say = (text: string): number => said.push(text);
  const watched: string[] = [];
  let used = processor;
  hooks['astro:config:setup']?.({
    config: { root: pathToFileURL(site.root), markdown: { processor } },
    isRestart: false,
    updateConfig: ({ markdown }: { markdown: { processor: unknown } }) => (used = markdown.processor),
    injectScript: () => undefined,
    addWatchFile: (url: URL) => watched.push(url.pathname.replace(site.root, '')),
  });
  const build = () => hooks['astro:build:start']?.({ logger: { info: say, warn: say, error: say } });
  return { said, watched, used: used as { createRenderer(shared: unknown): Promise<Renderer> }, build };
}

interface Renderer {
  render(content: string, options?: unknown): Promise<{ code: string }>;
}

/** A processor of its own kind: it hands the Markdown back, in brackets. */
const plain = () => ({
  name: 'plain',
  options: {},
  createRenderer: async () => ({ render: async (content: string) => ({ code: `[${content}]` }) }),
});

describe('the integration', () => {
  const site = copySite('integration');

  test('watches the settings and the larder that they name', () => {
    expect(started(site, plain()).watched).toEqual(['retare.yaml', 'larder.yaml']);
  });

  test('checks the posts of its option alone', () => {
    const { build, said } = started(site, plain(), { posts: ['src/content/posts/plain.md'] });
    build();
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^0 posts, 0 amounts, 3 kitchens: 0 errors, 0 warnings, \d\.\d s$/);
  });

  test('hooks into a processor once, however often it starts', async () => {
    const render = async (processor: unknown): Promise<string> => {
      const { used } = started(site, processor);
      const again = started(site, used).used;
      return (await (await again.createRenderer({})).render('At :temp[40°F].')).code;
    };
    expect(await render(plain())).toMatch(/^\[At <span [^>]*>40°F<\/span><span [^>]*>4°C<\/span>\.\]$/);
    const remark = unified();
    expect((await render(remark)).match(/40°F/g)).toHaveLength(1);
    expect(remark.options.remarkPlugins).toHaveLength(1);
  });

  test('refuses annotations in MDX where the processor gives it no way in', () => {
    site.write('src/content/posts/supper.mdx', 'At :temp[40°F].\n');
    expect(started(site, plain()).build).toThrow(/^src\/content\/posts\/supper\.mdx is MDX, .*No page was written$/);
    expect(started(site, unified()).build).not.toThrow();
  });
});
