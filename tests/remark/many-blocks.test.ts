import { checkPost } from '@retare/check';
import { builtInLarder, defaultSettings } from '@retare/larder';
import { describe, expect, test } from 'vitest';
import { recipeInPost } from '../reauthoring/recipe-in-post.ts';
import { render, serving } from './pipeline.ts';

const block = (at: number): string => `:::ingredients{kitchen=us #p${at}}\n- ${at + 1} cups flour\n:::\n`;
const post = Array.from({ length: 24 }, (_, at) => block(at)).join('\n');
const method = '\n:::method\nHeat the oven to :oven[350°F].\n:::\n';

describe('a post of many blocks', () => {
  test('is read to its last one', () => {
    const { parts, steps } = recipeInPost(`${post}${method}`);
    expect(parts.map(({ native }) => native.lines.length)).toEqual(Array.from({ length: 24 }, () => 1));
    expect(steps.flatMap(({ native }) => native.mentions.map(({ kind }) => kind))).toContain('oven');
  });

  test('leaves none of them on the page as it was written', () => {
    const { html } = render(`${post}${method}`, { options: serving('us', 'uk') });
    expect(html).not.toContain(':::');
    expect(html).toContain('180°C');
  });

  test('is checked to its last one', () => {
    const wrong = `${post}\n:::ingredients{kitchen=us #last}\n- 1 cup flibberflour\n:::\n`;
    const { file } = checkPost(wrong, 'post.md', { larder: builtInLarder(), settings: defaultSettings });
    expect(file.messages.some(({ reason }) => reason.includes('flibberflour'))).toBe(true);
  });
});
