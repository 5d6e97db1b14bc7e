import { partOfEgg } from '../../kitchen/egg.js';
import type { Line, Recipe } from '../../recipe/recipe.js';
import { sentencesOf } from '../../recipe/sentences.js';
import { saysThatTheyStayWhole } from './eggs-in-one-piece.js';

const egg = /\b(?:eggs?|yolks?|whites?)\b/;
/** Bought so that it may be eaten raw, or no egg of a hen in its shell at all. */
const safe = /\bpasteuri[sz]ed\b/;
/** Heat that is taken away again cooks nothing. */
const away = /\b(?:off|from|without|turn(?:ed)? (?:off|down)) (?:the |any )?heat\b/g;
/** `cooked pasta` was cooked before. */
const heat =
  /\b(?:bak(?:e|es|ing)|boil(?:s|ing|er)?|simmer(?:s|ing)?|(?:deep-|stir-|air-)?fry(?:ing|er)?|fries|saut[eé](?:s|ing)?|cook(?:s|ing)?|roast(?:s|ing)?|grill(?:s|ing)?|broil(?:s|ing|er)?|steam(?:s|ing)?|poach(?:es|ing)?|scrambl(?:e|es|ing)|griddle|toast(?:s|ing)?|microwave|sear(?:s|ing)?|barbecue|smoke|(?:pre)?heat(?:s|ing)?|turn(?:s|ing)? brown|ovens?|skillet|stove|iron|bain-marie|water bath|golden|browned|blowtorch)\b/;
/** What is done to egg itself, before it comes into the dish. */
const cookedFirst =
  /\b(?:boil(?:s|ed|ing)?|poach(?:es|ed|ing)?|fry|fries|fried|scrambl(?:e|es|ed|ing)|microwave|omelet(?:te)?s?)\b/;

/**
 * Whether a dish is eaten with egg that no step heats: its method has no word for heat in or after the last sentence that names egg, or
 * none at all, and no sentence that names egg boils or fries. A recipe without a method says nothing.
 */
export function leavesEggRaw(recipe: Recipe): boolean {
  if (!recipe.parts.some(({ native }) => native.lines.some(isRawAtFirst))) return false;
  const sentences = sentencesOf(recipe);
  if (sentences.every((sentence) => sentence.trim() === '')) return false;
  if (sentences.some((sentence) => egg.test(sentence) && cookedFirst.test(sentence))) return false;
  const last = sentences.findLastIndex((sentence) => egg.test(sentence));
  return !sentences.slice(Math.max(last, 0)).some((sentence) => heat.test(sentence.replaceAll(away, ' ')));
}

function isRawAtFirst(line: Line): boolean {
  return partOfEgg(line.food) !== null && !saysThatTheyStayWhole(line) && !safe.test(line.text.toLowerCase());
}
