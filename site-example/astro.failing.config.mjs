// The same site with three drafts that cannot be published, into a folder of its own.
process.env.RETARE_FAILING = '1';
const { default: config } = await import('./astro.config.mjs');

export default { ...config, outDir: './dist-failing', cacheDir: './node_modules/.astro-failing' };
