import { translateName } from '../../food/name.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { listed } from '../../words/listed.js';
import type { VersionMention } from '../version.js';
import { amountEdits, applyEdits } from '../words/edit.js';
import type { AmountMention } from './listing.js';
import { theRest } from './measure-shares.js';
import type { SharedFood } from './shares.js';

/**
 * A share takes the place of the amount; other words of the annotation (`2 onions`, `½ cup cream`) are kept. Of several foods that take
 * the listed one's place each is named.
 */
export function shareText(
  mention: AmountMention,
  share: readonly SharedFood[],
  kitchen: Kitchen,
): { text: string | null; foods: VersionMention['foods'] } {
  const { reading, food } = mention;
  const [first, ...others] = share;
  if (first === undefined) return { text: null, foods: [] };
  const named = reading.food !== null && reading.amountSpans.length > 0;
  if (others.length > 0) {
    const foods = share.map(({ text, name }) => ({
      text: `${text} ${name ?? reading.food?.text ?? mention.of ?? ''}`.trim(),
      name: name ?? mention.of ?? '',
    }));
    const all = listed(
      foods.map(({ text }) => text),
      'and',
    );
    if (!named || reading.food === null) return { text: all, foods };
    const gone = { ...reading.food.span, text: '' };
    return { text: applyEdits(mention.text, [...amountEdits(reading, all), gone]).trimEnd(), foods };
  }
  if (!named || reading.food === null) return { text: first.text, foods: [] };
  const name = first.name ?? (food === null ? null : translateName(food, reading.food.text, kitchen.id));
  const renamed = name === null ? [] : [{ ...reading.food.span, text: name }];
  const amount = first.text === theRest ? `${theRest} of the` : first.text;
  return { text: applyEdits(mention.text, [...amountEdits(reading, amount), ...renamed]), foods: [] };
}
