import { builtInLarder, type LoadedSettings } from '@retare/larder';
import { explainFood } from './explain-food.js';
import { explainKitchen } from './explain-kitchen.js';
import { type Section, sectionText } from './section.js';

/** What a site's larder file did to one entry of the larder. */
export interface Change {
  kind: 'food' | 'kitchen';
  id: string;
  change: 'added' | 'changed' | 'removed';
  /** Lines of its explanation that are gone, and that are new. */
  before: string[];
  after: string[];
}

/** What a site's larder file changed: empty without one. */
export function siteChanges({ larder, siteLarder }: LoadedSettings): Change[] {
  const base = builtInLarder();
  const foods = Object.entries(siteLarder?.foods ?? {}).map(([id, { names, sold }]): Change => {
    // A new kitchen has the shops of the one it extends: that is no change of this food.
    const said = [...Object.keys(names ?? {}), ...Object.keys(sold ?? {})].filter((each) => larder.kitchens.has(each));
    const kitchens = [...new Set([...base.kitchens.keys(), ...said])];
    const [old, now] = [base.foods.get(id), larder.foods.get(id)];
    const before = old === undefined ? [] : linesOf(explainFood(old, { larder: base, kitchens }));
    const after = now === undefined ? [] : linesOf(explainFood(now, { larder, kitchens }));
    return { kind: 'food', id, change: kindOf(old, now), ...difference(before, after) };
  });
  const changed = Object.keys(siteLarder?.kitchens ?? {}).map((id): Change => {
    const before = linesOf(explainKitchen(id, null));
    const own = { kitchens: { [id]: siteLarder?.kitchens?.[id] ?? {} } };
    const after = linesOf(explainKitchen(id, own).filter(({ title }) => title.startsWith('the site')));
    return { kind: 'kitchen', id, change: before.length === 0 ? 'added' : 'changed', before: [], after };
  });
  return [...foods, ...changed];
}

function kindOf(old: unknown, now: unknown): Change['change'] {
  if (now === undefined) return 'removed';
  return old === undefined ? 'added' : 'changed';
}

/** Each statement on a line of its own, with what it is about. */
function linesOf(sections: readonly Section[]): string[] {
  return sections.flatMap(({ title, rows }) =>
    rows.map((row) =>
      sectionText({ title, rows: [row] })
        .split('\n')
        .map((line) => line.trim())
        .join(': '),
    ),
  );
}

function difference(before: readonly string[], after: readonly string[]): Pick<Change, 'before' | 'after'> {
  return {
    before: before.filter((line) => !after.includes(line)),
    after: after.filter((line) => !before.includes(line)),
  };
}
