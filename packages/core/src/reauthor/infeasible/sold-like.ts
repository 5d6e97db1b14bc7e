import type { Food } from '../../food/food.js';
import { soldIn } from '../../kitchen/shop/buy.js';
import type { Searched } from '../search/search-recipe.js';

const mostFoods = 3;

/**
 * Foods that the kitchen sells and that are like another: those that the larder lets take the same food's place, then those of its role
 * that share words with its names, most words first.
 */
export function soldLike(food: Food, { kitchen, foods }: Searched['context']): Food[] {
  const own = wordsOf(food);
  const all = [...foods.values()];
  const beside = all.flatMap((other) => placesSharedWith(food, other));
  const others = new Set(beside.flatMap(({ others: each }) => each));
  const places = new Set(beside.map(({ place }) => place));
  return all
    .filter((other) => other.id !== food.id && other.role !== 'cure' && soldIn(other, kitchen.id)?.sold === true)
    .map((other) => {
      const shared = other.role === food.role ? [...wordsOf(other)].filter((word) => own.has(word)).length : 0;
      const known = others.has(other.id) ? 2 * mostWords : places.has(other.id) ? mostWords : 0;
      return { other, shared: known + shared };
    })
    .filter(({ shared }) => shared > 0)
    .sort((a, b) => b.shared - a.shared)
    .slice(0, mostFoods)
    .map(({ other }) => other);
}

/** More than any two foods have in common. */
const mostWords = 1000;

/** Where a food is one of several that may take another's place by themselves: that place, and the others. */
function placesSharedWith(food: Food, other: Food): { place: string; others: string[] }[] {
  return Object.values(other.sold).flatMap(({ standIns }) => {
    const alone = standIns.flatMap(({ parts }) => (parts.length === 1 ? parts.map((part) => part.food) : []));
    return alone.includes(food.id) ? [{ place: other.id, others: alone }] : [];
  });
}

function wordsOf({ id, names }: Food): Set<string> {
  const all = [id.replaceAll('-', ' '), ...Object.values(names).flatMap((list) => list.map(({ one }) => one))];
  return new Set(all.flatMap((name) => name.toLowerCase().split(/[^\p{L}]+/u)).filter((word) => word.length > 3));
}
