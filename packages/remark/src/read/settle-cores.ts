import { isStricter, type Kitchen, type Line, listedCore, type Method } from '@retare/core';
import type { ReadingContext, RecipeReading } from './reading.js';

/**
 * Holds core temperatures against what the lines list, not against what its bare name would be: `of=beef` of ground beef is ground meat.
 *
 * @param reading With all its blocks read; the classes of its core temperatures are set.
 */
export function settleCores({ recipe }: RecipeReading, { kitchens }: ReadingContext): void {
  const all = [...kitchens.values()];
  const listed = new Map<string, (name: string) => string | null>();
  const listedIn = (kitchen: Kitchen): ((name: string) => string | null) => {
    const known = listed.get(kitchen.id) ?? listedCore(linesOf(kitchen.id), kitchen, all);
    listed.set(kitchen.id, known);
    return known;
  };
  const linesOf = (kitchen: string): Line[] =>
    recipe.parts.flatMap(
      ({ native, authored }) => (authored.find((block) => block.kitchen === kitchen) ?? native).lines,
    );
  for (const method of recipe.steps.flatMap(({ native, authored }) => [native, ...authored])) {
    const kitchen = kitchens.get(method.kitchen);
    if (kitchen !== undefined) settle(method, kitchen, listedIn(kitchen), all);
  }
}

function settle(
  { mentions }: Method,
  kitchen: Kitchen,
  listed: (name: string) => string | null,
  all: readonly Kitchen[],
): void {
  for (const mention of mentions) {
    if (mention.kind !== 'core' || mention.of === null) continue;
    const found = listed(mention.of);
    if (found === null) continue;
    // A class that is named as such is a promise to hold at least that.
    const isClass = mention.class === mention.of;
    if (!isClass || isStricter(found, mention.of, kitchen, all)) mention.class = found;
  }
}
