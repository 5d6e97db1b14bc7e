// Writes dist/reader.css for the built-in kitchens, for pages that are not built by an integration.
import { writeFileSync } from 'node:fs';
import { builtInLarder } from '@retare/larder';
import { readerStyle } from '../dist/page/reader-style.js';

writeFileSync(new URL('../dist/reader.css', import.meta.url), readerStyle([...builtInLarder().kitchens.keys()]));
