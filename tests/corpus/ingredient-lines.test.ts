import { readLine } from '@retare/core';
import { expect, test } from 'vitest';
import { lineLabels, withoutMarker } from './corpus.ts';
import { describeCorpus } from './describe-corpus.ts';
import { type LineScore, scoreLine, type Verdict } from './score.ts';

describeCorpus('the ingredient lines of real recipes', () => {
  const scores = lineLabels().map((label) => ({
    label,
    score: scoreLine(readLine(withoutMarker(label.text)), label),
  }));
  const share = (part: keyof LineScore, verdict: Verdict): number =>
    scores.filter(({ score }) => score[part] === verdict).length / scores.length;
  const failing = (part: keyof LineScore): string[] =>
    scores.filter(({ score }) => score[part] !== 'right').map(({ label }) => label.text);

  test('there are at least 500 of them', () => {
    expect(scores.length).toBeGreaterThanOrEqual(500);
  });

  test('amount, unit and pack are exactly right in 99.5 % of them', () => {
    expect(share('amount', 'right'), failing('amount').join('\n')).toBeGreaterThanOrEqual(0.995);
  });

  test('a wrong amount is read in at most 0.2 % of them', () => {
    expect(share('amount', 'wrong'), failing('amount').join('\n')).toBeLessThanOrEqual(0.002);
  });

  test('the food is named right in 97 % of them', () => {
    expect(share('food', 'right'), failing('food').join('\n')).toBeGreaterThanOrEqual(0.97);
  });

  test('99.5 % of them are told apart as amount, no amount, or no ingredient', () => {
    expect(share('kind', 'right'), failing('kind').join('\n')).toBeGreaterThanOrEqual(0.995);
  });

  test('99.5 % of them are told apart as optional or not', () => {
    expect(share('optional', 'right'), failing('optional').join('\n')).toBeGreaterThanOrEqual(0.995);
  });
});
