import { gramsIn } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import { partOfEgg } from '../../kitchen/egg.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import type { Line } from '../../recipe/recipe.js';
import type { Searched, SearchInput } from '../search/search-recipe.js';
import { asks, type Candidate } from './candidate-change.js';
import { withFood } from './changed-input.js';

/** Packs of a food come down to about a third of the smallest that the larder lists. Common practice, no source. */
const smallestPack = 3;

/** Half packs of what comes whole, and a pack of the size that is asked for. */
export function otherPacks(line: Line, { context, plans }: Searched): Candidate[] {
  const { kitchen } = context;
  const demand = plans.flatMap(({ demands }) => demands).find(({ lines }) => lines.includes(line));
  const food = demand?.food ?? null;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (demand === undefined || food === null || sold === null || !isUseWhole(sold) || partOfEgg(food) !== null)
    return [];
  const halved = { ...sold, packs: sold.packs.map((pack) => ({ ...pack, whole: 'half' as const })) };
  const unit = kitchen.counter.unit === 'lb' ? 'oz' : 'g';
  const grams = new Exact(demand.quantity);
  const size = (unit === 'oz' ? grams.dividedBy(gramsIn('oz')) : grams).toSignificantDigits(2);
  const [like] = sold.packs;
  // A shop that sells tins may have a smaller one, but none with a spoonful in it.
  const isLikely = like !== undefined && grams.greaterThanOrEqualTo(like.grams.dividedBy(smallestPack));
  const own = !isLikely ? [] : [{ ...like, size, unit, grams, drainedGrams: null, marks: null } as const];
  const packs = [...sold.packs, ...own].sort((a, b) => a.grams.comparedTo(b.grams));
  const soldAs = (other: typeof sold): Food => ({ ...food, sold: { ...food.sold, [kitchen.id]: other } });
  const isHalved = sold.packs.every((pack) => pack.whole === 'half');
  return [
    ...(isHalved
      ? []
      : [
          {
            change: { kind: 'half-pack', line, food } as const,
            asks: asks.halfPack,
            make: (made: SearchInput) => withFood(made, soldAs(halved)),
          },
        ]),
    ...(own.length === 0
      ? []
      : [
          {
            change: { kind: 'pack-size', line, food, size, unit } as const,
            asks: asks.packSize,
            make: (made: SearchInput) => withFood(made, soldAs({ ...sold, packs })),
          },
        ]),
  ];
}
