import { readMentions } from '@retare/core';
import { expect, test } from 'vitest';
import { type MentionLabel, mentionLabels, methodLines } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';
import { scoreMentions } from './score-mentions.ts';

/** Labels by file and line. */
function byLine(): Map<string, MentionLabel[]> {
  const found = new Map<string, MentionLabel[]>();
  for (const label of mentionLabels()) {
    const place = `${label.file}:${label.line}`;
    found.set(place, [...(found.get(place) ?? []), label]);
  }
  return found;
}

describeCorpus('the temperatures, pans and lengths of real recipes', () => {
  const labels = byLine();
  const lines = methodLines();
  const scores = lines.map(({ file, line, text }) => {
    return { text, score: scoreMentions(readMentions(text), labels.get(`${file}:${line}`) ?? []) };
  });

  test('every labelled line is among those that are read', () => {
    const places = new Set(lines.map(({ file, line }) => `${file}:${line}`));
    expect([...labels.keys()].filter((place) => !places.has(place))).toEqual([]);
  });

  test('99 % of them are found, with their kind, numbers and unit', () => {
    const right = scores.reduce((sum, { score }) => sum + score.right, 0);
    const missed = scores.filter(({ score }) => score.missed.length > 0).map(({ text }) => text);
    expect(right / mentionLabels().length, missed.join('\n')).toBeGreaterThanOrEqual(0.99);
  });

  test('nothing is invented', () => {
    const invented = scores.filter(({ score }) => score.invented.length > 0);
    expect(invented.map(({ text, score }) => `${text}: ${score.invented.join(' ')}`)).toEqual([]);
  });
});
