import { unified } from '@astrojs/markdown-remark';
import retare from '@retare/astro';
import { defineConfig } from 'astro/config';

const published = 'src/content/posts/*.md';
const unpublishable = 'failing/*.md';

export default defineConfig({
  site: 'https://saltmarsh-suppers.example',
  markdown: { processor: unified() },
  integrations: [retare({ posts: process.env.RETARE_FAILING === '1' ? [published, unpublishable] : [published] })],
  // The pages allow scripts and styles from their own files only, so nothing may be written into the HTML.
  build: { inlineStylesheets: 'never' },
  vite: { build: { assetsInlineLimit: 0 } },
});
