import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { kitchenIds } from '../reauthoring/setting.js';
import { runOn, testFolder } from './draft-command.js';

const folder = testFolder();
writeFileSync(join(folder, 'retare.yaml'), `kitchens: [${kitchenIds.join(', ')}]\n`);

const cups = ['1½ cups all-purpose flour', '¾ cup sugar', '½ cup butter', '2 tsp baking powder'];
const grams = ['190 g plain flour', '150 g caster sugar', '115 g butter', '9 g baking powder'];

/** Native kitchens with their eggs: of every size that is written otherwise, in part, to glaze, weighed by the author. */
const posts = [
  { kitchen: 'us', lines: [...cups, '2 large eggs'] },
  { kitchen: 'us', lines: [...cups, '2 extra-large eggs (at room temperature)'] },
  { kitchen: 'us', lines: [...cups, '1 large egg', '2 large egg yolks', '1 egg, beaten, to glaze'] },
  { kitchen: 'us', lines: [...cups, '2 large eggs (100 g)'] },
  { kitchen: 'us', lines: ['1 cup sugar', '4 large egg whites', '¼ tsp cream of tartar'] },
  { kitchen: 'us', lines: [...cups, '1½ large eggs'] },
  { kitchen: 'us', lines: [...cups, '2 large eggs plus 1 yolk'] },
  { kitchen: 'us', lines: [...cups, '1 egg + 1 egg white'] },
  { kitchen: 'uk', lines: [...grams, '1 large egg'] },
  { kitchen: 'uk', lines: [...grams, '½ egg white', '1½ eggs, beaten'] },
  { kitchen: 'uk', lines: [...grams, 'Eggs: 2 large'] },
  { kitchen: 'eu', lines: [...grams, '2 eggs (size L)'] },
  { kitchen: 'eu', lines: [...grams, '2–3 medium eggs'] },
  { kitchen: 'au', lines: [...grams, '2 eggs (800 g carton)'] },
  { kitchen: 'au', lines: [...grams, '2 x 60 g eggs'] },
  { kitchen: 'nz', lines: [...grams, '2 size 7 eggs'] },
];

test.for(posts)('a drafted version reads as it was meant: $lines from $kitchen', async ({ kitchen, lines }) => {
  const block = `:::ingredients{kitchen=${kitchen}}\n${lines.map((line) => `- ${line}`).join('\n')}\n:::\n`;
  let post = `---\nretare:\n  kitchen: ${kitchen}\n---\n\n${block}`;
  const own = await findingsIn(post);
  let drafted = 0;
  for (const to of kitchenIds.filter((id) => id !== kitchen)) {
    const { code, after } = await runOn(folder, post, ['draft', '--for', to, '--write']);
    if (code !== 0) continue;
    drafted += 1;
    post = after;
  }
  expect(drafted).toBeGreaterThanOrEqual(4);
  // Half an egg is a finding in the author's own block, and in no version.
  const misread = (await findingsIn(post)).filter((finding) => !own.includes(finding));
  expect(misread).toEqual([]);
});

async function findingsIn(post: string): Promise<string[]> {
  const { out } = await runOn(folder, post, ['check', '--format', 'json']);
  const findings = JSON.parse(out) as { rule: string; message: string; line: number }[];
  return findings
    .filter(({ rule }) => rule !== 'awkward-leftover')
    .map(({ rule, message, line }) => `${line}: ${rule}: ${message}`);
}
