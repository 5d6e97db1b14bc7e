import { type CheckedPost, checkPost, type Site } from '@retare/check';
import { builtInLarder, defaultSettings, type RuleName, type Settings } from '@retare/larder';

const site: Site = { larder: builtInLarder(), settings: defaultSettings };

/** What the check says of a post under one rule. */
export function messagesOf(
  text: string,
  rule: RuleName,
  settings: Partial<Settings> = {},
  only?: readonly string[],
): CheckedPost['file']['messages'] {
  const within = { ...site, settings: { ...defaultSettings, ...settings }, ...(only === undefined ? {} : { only }) };
  return checkPost(text, 'posts/post.md', within).file.messages.filter(({ ruleId }) => ruleId === rule);
}

/** The words of the file that a message stands at. */
export function wordsAt(text: string, { place }: CheckedPost['file']['messages'][number]): string {
  if (place === undefined || !('start' in place)) return '';
  return text.slice(place.start.offset, place.end.offset);
}
