import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { corpusFolder, type LineLabel, lineLabels, type MentionLabel, mentionLabels } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';

interface Report {
  file: string;
  kitchen: string;
  kitchenConfidence: number;
  lines: { line: number; kind: string; amounts: LineLabel['amounts']; pack: LineLabel['pack'] }[];
  mentions: { line: number; kind: string; low: string; high: string | null; unit: string }[];
}

const command = fileURLToPath(new URL('../../packages/cli/bin/retare.js', import.meta.url));

describeCorpus('retare read on real posts without annotations', () => {
  const reports = new Map<string, Report>();
  let read: Report[] = [];

  beforeAll(() => {
    const folders = ['a', 'b'].map((name) => `${corpusFolder()}/${name}`);
    const out = execFileSync(process.execPath, [command, 'read', ...folders, '--format', 'json'], { maxBuffer: 1e9 });
    read = JSON.parse(String(out)) as Report[];
    for (const report of read) reports.set(report.file.split(/[\\/]/).at(-1) ?? '', report);
  });

  const lineAt = ({ file, line }: { file: string; line: number }): Report['lines'][number] | undefined =>
    reports.get(file)?.lines.find((each) => each.line === line);

  test('reads every file without a crash', () => {
    expect(read).toHaveLength(327);
    expect(read.flatMap(({ lines }) => lines.filter(({ amounts }) => amounts.length > 0)).length).toBeGreaterThan(1500);
  });

  test('finds 99 % of the labelled ingredient lines that state an amount', () => {
    const stated = lineLabels().filter(({ kind }) => kind === 'amount');
    const found = stated.filter((label) => lineAt(label) !== undefined);
    expect(found.length / stated.length).toBeGreaterThanOrEqual(0.99);
  });

  test('states no wrong amount or pack in a line that it finds', () => {
    const wrong = lineLabels().flatMap((label) => {
      const line = lineAt(label);
      if (line === undefined || line.amounts.length === 0) return [];
      const same = JSON.stringify([line.amounts, line.pack]) === JSON.stringify([label.amounts, label.pack]);
      return same ? [] : [label.text];
    });
    expect(wrong).toEqual([]);
  });

  test('finds 99 % of the labelled temperatures, pans and lengths and invents at most 1 %', () => {
    const labels = mentionLabels();
    const keys = (mentions: readonly Omit<MentionLabel, 'text' | 'impliedUnit' | 'ambiguous' | 'file'>[]): string[] =>
      mentions.map(({ line, kind, low, high, unit }) => [line, kind, low, high, unit].join(' '));
    let found = 0;
    const invented: string[] = [];
    for (const [file, { mentions }] of reports) {
      const wanted = keys(labels.filter((label) => label.file === file));
      for (const key of keys(mentions as never)) {
        const at = wanted.indexOf(key);
        if (at < 0) invented.push(`${file}: ${key}`);
        else {
          wanted.splice(at, 1);
          found += 1;
        }
      }
    }
    expect(found / labels.length).toBeGreaterThanOrEqual(0.99);
    expect(invented.length).toBeLessThanOrEqual(labels.length / 100);
  });

  test('guesses a kitchen with a confidence between 0 and 1', () => {
    for (const { kitchen, kitchenConfidence } of read) {
      expect(['us', 'ca', 'uk', 'eu', 'au']).toContain(kitchen);
      expect(kitchenConfidence).toBeGreaterThanOrEqual(0);
      expect(kitchenConfidence).toBeLessThanOrEqual(1);
    }
  });
});
