import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { testFolder } from './draft-command.js';

/** A site whose larder has gelatine in sachets that are used whole, so that a little milk cannot be set with it. */
export function siteWithWholeGelatine(): string {
  const folder = testFolder();
  writeFileSync(join(folder, 'retare.yaml'), 'larder: larder.yaml\n');
  const sold = "sold: { uk: { packs: [{ size: 12 g, word: sachet, whole: 'yes' }], source: made up for a test } }";
  writeFileSync(join(folder, 'larder.yaml'), `foods:\n  powdered-gelatine:\n    ${sold}\n`);
  return folder;
}

/** A batch that asks for 7.09 g. */
export const setMilk = `:::ingredients{kitchen=us}
- 2 cups milk
- 1 (¼-oz) envelope unflavored gelatin
:::
`;
