import { type CheckedPost, checkPost, type Site } from '@retare/check';
import { builtInLarder, defaultSettings, type RuleName, type Settings } from '@retare/larder';
import { wordsAt } from './checked.ts';

/** A finding as a test compares it. */
export interface Said {
  severity: 'error' | 'warning';
  kitchens: string[];
  /** The words of the file that it stands at. */
  at: string;
  text: string;
  expected: string[];
}

/** Ingredient lines of a native US block. */
export function lines(...items: string[]): string {
  return `:::ingredients{kitchen=us}\n${items.map((item) => `- ${item}\n`).join('')}:::\n`;
}

/** Lines that an author wrote for a UK kitchen. */
export function ukLines(...items: string[]): string {
  return `${lines('2 bay leaves')}\n:::ingredients{kitchen=uk}\n${items.map((item) => `- ${item}\n`).join('')}:::\n`;
}

/** What the check says of a post under one rule, in the US and UK kitchens. */
export function said(post: string, rule: RuleName, settings: Partial<Settings> = {}): Said[] {
  const site: Site = { larder: builtInLarder(), settings: { ...defaultSettings, kitchens: ['us', 'uk'], ...settings } };
  const { file } = checkPost(post, 'posts/post.md', site);
  return file.messages.filter(({ ruleId }) => ruleId === rule).map((message) => inShort(post, message));
}

function inShort(post: string, message: CheckedPost['file']['messages'][number]): Said {
  const { kitchens } = message as { kitchens?: string[] };
  return {
    severity: message.fatal === true ? 'error' : 'warning',
    kitchens: kitchens ?? [],
    at: wordsAt(post, message),
    text: message.reason,
    expected: message.expected ?? [],
  };
}
