import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPost } from '@retare/check';
import { loadSettings } from '@retare/larder';
import { expect, test } from 'vitest';
import { runOn } from './draft-command.js';
import { setMilk, siteWithWholeGelatine } from './whole-gelatine.js';

/** A site with whole sachets of 12 g of gelatine for 7.09 g: 69 % more, of which the ratio to the milk shows 68.7 %. */
function siteWith(reauthoring: string): string {
  const folder = siteWithWholeGelatine();
  const path = join(folder, 'retare.yaml');
  writeFileSync(path, `${readFileSync(path, 'utf8')}reauthoring: ${reauthoring}\n`);
  return folder;
}

const drifts = (folder: string, text: string): (string | undefined)[] =>
  checkPost(text, 'post.md', loadSettings(folder)).file.messages.flatMap(({ ruleId }) =>
    ruleId === 'ratio-drift' ? [ruleId] : [],
  );

test('a limit of the settings holds for what is drafted, and for the check of it', async () => {
  const folder = siteWith('{ limits: { gelling: 0.9 } }');
  // The drift of a line is bounded too, by 35 % as a logarithm: an amount nearer to a sachet keeps within it.
  const post = setMilk.replace('1 (¼-oz) envelope', '3 tsp');
  const { code, after } = await runOn(folder, post, ['draft', '--for', 'uk', '--write']);
  expect(code).toBe(0);
  expect(after).toContain('1 × 12 g sachet powdered gelatine');
  const bent = after.replace(/\d+ ml milk/u, '475 ml milk');
  expect(drifts(folder, bent)).toEqual([]);
  expect(drifts(siteWithWholeGelatine(), bent)).toEqual(['ratio-drift']);
});

test('a weight of the settings changes what is chosen', async () => {
  const post = ':::ingredients{kitchen=us}\n- 3 large eggs\n- 1 (14.5-oz) can diced tomatoes\n- 1 lb potatoes\n:::\n';
  const batch = async (reauthoring: string): Promise<string> => {
    const { out } = await runOn(siteWith(reauthoring), post, ['draft', '--for', 'au', '--format', 'json']);
    return JSON.parse(out)[0].versions[0].cost;
  };
  expect(Number(await batch('{ weights: { plain: 100 } }'))).toBeGreaterThan(Number(await batch('{}')));
});

test('a slip in them is told with its line, and nothing is drafted', async () => {
  const { code, out, err } = await runOn(siteWith('{ limits: { gelling: 5% } }'), setMilk, ['draft', '--for', 'uk']);
  expect([code, out]).toEqual([2, '']);
  expect(err).toBe(
    'retare.yaml:2:35 `gelling` takes a fraction from 0 to 1, not `5%`. Write `0.05`\nNothing was drafted.\n',
  );
});
