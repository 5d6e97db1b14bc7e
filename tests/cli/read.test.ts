import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run } from '../../packages/cli/src/run.ts';

/** Runs the command on a post of its own folder. */
async function readPost(text: string, format = 'json'): Promise<{ code: number; out: string; err: string }> {
  const cwd = mkdtempSync(join(tmpdir(), 'retare-read-'));
  writeFileSync(join(cwd, 'post.md'), text);
  const out: string[] = [];
  const err: string[] = [];
  const output = {
    out: (each: string) => void out.push(each),
    err: (each: string) => void err.push(each),
    color: false,
    cwd,
  };
  const code = await run(['read', 'post.md', '--format', format], output);
  return { code, out: out.join(''), err: err.join('') };
}

const annotated = `---
title: Clams
retare:
  kitchen: us
  makes: 4 servings
---

:::ingredients[For the broth]{kitchen=us}
- 1 (14.5-oz) can diced tomatoes
- 1/3 cup white wine, plus 1 tbsp
:::

:::method
1. Heat the oven to :oven[400°F/200°C] and set out a :pan[9×13 in].
2. Cook to :core[145°F]{of=fish}.
:::
`;

describe('retare read', () => {
  test('takes `Ingredients` alone in a paragraph for a heading, a list before it for prose, and the title for no part', async () => {
    const post = `# Salad

Why I like it:

- It takes 10 minutes
- It costs 4 dollars
- 3 friends asked for it

Ingredients

- 2 cucumbers
- 200 g feta

Preparation

1. Chop into cubes.
`;
    const [report] = JSON.parse((await readPost(post)).out);
    const shown = report.lines.map(({ text, part }: { text: string; part: string | null }) => [text, part]);
    expect(shown).toEqual([
      ['2 cucumbers', null],
      ['200 g feta', null],
    ]);
    const [untitled] = JSON.parse((await readPost('# Soup\n\n- 1 onion\n- 2 cups stock\n')).out);
    expect(untitled.lines.map(({ part }: { part: string | null }) => part)).toEqual([null, null]);
  });

  test('shows the lines of an annotated post as decimal strings, at their place in the file', async () => {
    const [report] = JSON.parse((await readPost(annotated)).out);
    expect(report).toMatchObject({ file: 'post.md', kitchen: 'us', kitchenConfidence: 1, makes: '4 servings' });
    expect(report.lines[0]).toMatchObject({
      line: 9,
      part: 'For the broth',
      text: '1 (14.5-oz) can diced tomatoes',
      kind: 'amount',
      amounts: [{ low: '1', high: null, unit: 'can', approx: false }],
      pack: { count: '1', size: '14.5', unit: 'oz', word: 'can' },
    });
    expect(report.lines[1]).toMatchObject({
      line: 10,
      amounts: [{ low: '0.3333', high: null, unit: 'cup', approx: false }],
      food: 'white wine',
      foodId: 'white-wine',
      further: [{ low: '1', high: null, unit: 'tbsp' }],
    });
  });

  test('shows the temperatures and pans of an annotated post, one for each value', async () => {
    const [report] = JSON.parse((await readPost(annotated)).out);
    expect(report.mentions).toEqual([
      { line: 14, kind: 'oven', low: '400', high: null, unit: 'F' },
      { line: 14, kind: 'oven', low: '200', high: null, unit: 'C' },
      { line: 14, kind: 'pan', low: '9', high: '13', unit: 'in' },
      { line: 15, kind: 'core', low: '145', high: null, unit: 'F' },
    ]);
  });

  test('finds the list of a plain post by its heading and leaves the steps alone', async () => {
    const post = '# Soup\n\n## Ingredients\n\n- 400 g potatoes\n- salt\n\n## Method\n\n- Boil 2 potatoes at 100 °C.\n';
    const [report] = JSON.parse((await readPost(post)).out);
    expect(report.lines.map(({ line }: { line: number }) => line)).toEqual([5, 6]);
    expect(report.mentions).toEqual([{ line: 10, kind: 'temp', low: '100', high: null, unit: 'C' }]);
  });

  test('finds a list without a heading by its shape', async () => {
    const post =
      'Salad\n=====\n\n* 2 cups greens\n* 1 lemon\n* olive oil\n\nToss everything and eat it at once, outdoors.\n';
    const [report] = JSON.parse((await readPost(post)).out);
    expect(report.lines.map(({ line }: { line: number }) => line)).toEqual([4, 5, 6]);
  });

  test('guesses the kitchen of a plain post from its units and words', async () => {
    const british =
      '## Ingredients\n\n- 200 g plain flour\n- 100 g caster sugar\n- 1 courgette\n\n## Method\n\nBake at 180°C.\n';
    const [uk] = JSON.parse((await readPost(british)).out);
    expect(uk).toMatchObject({ kitchen: 'uk' });
    expect(uk.kitchenConfidence).toBeGreaterThan(0);
    const american =
      '## Ingredients\n\n- 2 cups all-purpose flour\n- 1 lb ground beef\n- 2 sticks butter\n\nBake at 350°F.\n';
    expect(JSON.parse((await readPost(american)).out)[0]).toMatchObject({ kitchen: 'us' });
  });

  test('says in text that a kitchen is a guess', async () => {
    const { out } = await readPost('## Ingredients\n\n- 1 cup flour\n', 'text');
    expect(out).toContain('kitchen: us, a guess (confidence');
    expect(out).toContain('3  1 cup | flour [plain-flour]');
  });

  test('says why an amount is left unread', async () => {
    const { out } = await readPost('## Ingredients\n\n- 5/6 bay leaves\n', 'text');
    expect(out).toContain('unread:');
  });

  test('leaves open what a tablespoon holds where nothing tells the kitchen', async () => {
    const [report] = JSON.parse((await readPost('## Ingredients\n\n- 1 tbsp honey\n')).out);
    expect(report.lines[0].doubt).toContain('14.8, 15 or 20 ml');
    const american =
      '## Ingredients\n\n- 1 tbsp honey\n- 2 cups all-purpose flour\n- 1 lb ground beef\n- 2 sticks butter\n\nBake at 350°F.\n';
    expect(JSON.parse((await readPost(american)).out)[0].lines[0].doubt).toBeNull();
  });

  test('ends with 2 where there is no such post', async () => {
    const err: string[] = [];
    const code = await run(['read', 'nothing.md'], {
      out: () => {},
      err: (each: string) => void err.push(each),
      color: false,
      cwd: tmpdir(),
    });
    expect(code).toBe(2);
    expect(err.join('')).toContain('There is no post at `nothing.md`');
  });
});
