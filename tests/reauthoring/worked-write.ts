import { writeFileSync } from 'node:fs';
import { workedPage } from './worked-page.ts';

/** Writes the page on three dishes anew, after a change of data or code that moves a number on purpose. */
writeFileSync(new URL('../../packages/core/WORKED.md', import.meta.url), workedPage());
