import { chmodSync, lstatSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from '@retare/cli';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.js';
import { runOn, testFolder } from './draft-command.js';

const folder = testFolder();
const draft = (post: string | Uint8Array, ...args: readonly string[]) => runOn(folder, post, ['draft', ...args]);

const post = `Before. 10:30, *odd*  spacing\t
  and a stray <b>tag</b>.

:::ingredients{kitchen=us}
- 2 (15-oz) cans butter beans
- 1 cup heavy cream
:::

:::ingredients{kitchen=au from="aaa bbb"}
- 2 × 400 g cans butter beans
- 225 ml thickened cream
:::

Between.

:::method
1. Heat the oven to :oven[400°F].
:::

After.`;

/** What stands in the file beside the first stretch that begins before a block and ends behind it. */
function without(text: string, kitchen: string, end = '\n'): string {
  const blocks = new RegExp(`${end}${end}:::\\w+\\{kitchen=${kitchen}[\\s\\S]*?${end}:::`, 'gu');
  return text.replace(blocks, '');
}

describe('retare draft --write', () => {
  test('puts the blocks after the native ones and the versions that are there, and touches no other byte', async () => {
    const { code, after, err } = await draft(post, '--for', 'uk', '--write');
    expect(code).toBe(0);
    expect(err).toBe('Wrote the version for `uk` into post.md.\n');
    expect(after).not.toBe(post);
    expect(without(after, 'uk')).toBe(post);
    expect(after.indexOf('kitchen=uk')).toBeGreaterThan(after.indexOf('thickened cream'));
    expect(after.lastIndexOf('kitchen=uk')).toBeGreaterThan(after.indexOf(':oven[400°F]'));
  });

  test('writes what it prints', async () => {
    const { out, after } = await draft(post, '--for', 'uk', '--write');
    const printed = out.match(/^:::\w[\s\S]*?^:::$/gmu) ?? [];
    expect(printed).toHaveLength(2);
    for (const block of printed) expect(after).toContain(`\n\n${block}\n`);
  });

  test('keeps the line ends of the file', async () => {
    const windows = post.replaceAll('\n', '\r\n');
    const { after } = await draft(windows, '--for', 'uk', '--write');
    expect(after.replaceAll('\r\n', '')).not.toContain('\n');
    expect(without(after, 'uk', '\r\n')).toBe(windows);
  });

  test('keeps the byte order mark of the file, and finds every place behind it', async () => {
    const windows = `\uFEFF${post.replaceAll('\n', '\r\n')}`;
    const { code, after } = await draft(windows, '--for', 'uk', '--write');
    expect(code).toBe(0);
    expect(without(after, 'uk', '\r\n')).toBe(windows);
    const told = async (text: string): Promise<string> =>
      (await runOn(folder, text, ['check'])).out.replace(/[\d.]+ s\n$/u, '');
    expect(await told(windows)).toBe(await told(post));
  });

  test('writes at the end of a file that does not end its last line', async () => {
    const short = ':::ingredients{kitchen=us}\n- 1 cup heavy cream\n:::';
    const { after } = await draft(short, '--for', 'uk', '--write');
    expect(after.startsWith(`${short}\n\n:::ingredients{kitchen=uk`)).toBe(true);
    expect(after.endsWith(':::')).toBe(true);
  });

  test('keeps several kitchens in the order that they are named in', async () => {
    const { after } = await draft(post, '--for', 'eu,uk', '--write');
    expect(recipeInPost(after).parts[0]?.authored.map(({ kitchen }) => kitchen)).toEqual(['au', 'eu', 'uk']);
    expect(without(without(after, 'uk'), 'eu')).toBe(post);
  });

  test('gives a version that is read back, drawn from the lines of now', async () => {
    const { after } = await draft(post, '--for', 'uk', '--write');
    const { code, out } = await runOn(folder, after, ['check', '--kitchen', 'uk', '--format', 'json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).not.toContainEqual(expect.objectContaining({ rule: 'stale-version' }));
    expect(JSON.parse(out)).not.toContainEqual(expect.objectContaining({ rule: 'missing-from', kitchens: ['uk'] }));
  });

  test('refuses where the kitchen has a version already, and still prints it', async () => {
    const { code, out, err, after } = await draft(post, '--for', 'uk,au', '--write');
    expect([code, after]).toEqual([1, post]);
    expect(out).toContain(':::ingredients{kitchen=au');
    expect(err).toMatch(/^post\.md has a version for `au` already\. .*\nNothing was written\.\n$/u);
  });

  test('gives a version of which the check does not say that a tin of unknown weight bends its ratios', async () => {
    // EU shops sell no hominy, so that nobody knows what a can of it holds; of chickpeas in its place they do.
    const cans = ':::ingredients{kitchen=eu}\n- 4 cans hominy\n- 500 g potatoes\n- 1 tbsp fine salt\n:::\n';
    const { code, after } = await draft(cans, '--for', 'uk', '--write');
    expect([code, after]).toEqual([0, expect.stringContaining('4 cans chickpeas')]);
    const { out } = await runOn(folder, after, ['check', '--kitchen', 'uk', '--format', 'json']);
    expect(out).not.toContain('ratio-drift');
  });

  test('takes a block that begins a few spaces in for what it is', async () => {
    const indented = 'Before.\n\n  :::ingredients{kitchen=us}\n  - 1 cup heavy cream\n  :::\n';
    const { code, after } = await draft(indented, '--for', 'uk', '--write');
    expect([code, after]).toEqual([
      0,
      `${indented}\n:::ingredients{kitchen=uk from=5o8}\n- 240 ml double cream\n:::\n`,
    ]);
    const listed = `- Two ways:\n\n${indented.slice('Before.\n\n'.length)}`;
    expect((await draft(listed, '--for', 'uk', '--write')).after).toBe(listed);
  });

  test('refuses where a block stands inside a quotation', async () => {
    const quoted =
      '> :::ingredients{kitchen=us}\n> - 1 cup heavy cream\n> :::\n>\n> :::method\n> Add :amount[½ cup]{of="heavy cream"}.\n> :::\n';
    const { code, err, after } = await draft(quoted, '--for', 'uk,au', '--write');
    expect([code, after]).toEqual([1, quoted]);
    expect(err).toBe(
      'In post.md a block stands inside a list or a quotation. Copy the version by hand.\nNothing was written.\n',
    );
  });

  test('refuses a file that is not UTF-8, whose other bytes would not stay as they are', async () => {
    const path = join(folder, 'post.md');
    const latin = Buffer.from(`# Cr\u00e8me\n\n${post}`, 'latin1');
    const { code, err } = await draft(latin, '--for', 'uk', '--write');
    expect([code, err.split('\n').slice(-2)]).toEqual([1, ['Nothing was written.', '']]);
    expect(err).toContain('post.md holds characters that are not UTF-8');
    expect(readFileSync(path).equals(latin)).toBe(true);
  });

  test('writes through a link to the post, which stays one', async () => {
    const [path, link] = [join(folder, 'linked.md'), join(folder, 'link.md')];
    writeFileSync(path, post);
    symlinkSync('linked.md', link);
    const output = { out: () => undefined, err: () => undefined, color: false, cwd: folder };
    expect(await run(['draft', 'link.md', '--for', 'uk', '--write'], output)).toBe(0);
    expect([lstatSync(link).isSymbolicLink(), readFileSync(path, 'utf8')]).toEqual([
      true,
      expect.stringContaining('kitchen=uk'),
    ]);
    for (const each of [path, link]) rmSync(each);
  });

  test('writes a new file in the place of the old one, with its mode, and leaves nothing beside it', async () => {
    const path = join(folder, 'post.md');
    writeFileSync(path, post);
    chmodSync(path, 0o640);
    const before = statSync(path).ino;
    await draft(post, '--for', 'uk', '--write');
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(statSync(path).ino).not.toBe(before);
    expect(readdirSync(folder)).toEqual(['post.md']);
  });
});
