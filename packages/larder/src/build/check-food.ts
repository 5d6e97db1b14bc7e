import { type Density, type Food, sameContainer } from '@retare/core';
import type { Fault } from '../read/problem.js';
import { exactOf } from '../schema/exact-number.js';
import type { FoodEntry, PackYaml, SoldYaml } from '../schema/food-schema.js';
import type { UnitsOf } from './build-food.js';
import { packGrams, type Weighing } from './build-sold.js';

/**
 * What no schema sees in one food: packs without a weight or out of order, shares over the whole, the same density twice.
 *
 * @param base The food that the entry overrides.
 * @returns Faults with paths inside the food.
 */
export function checkFood(entry: FoodEntry, unitsOf: UnitsOf, base?: Food): Fault[] {
  const densities =
    entry.densities?.map(({ form }) => ({ form: form ?? null, gramsPerMl: exactOf(1) })) ?? base?.densities;
  const sold = Object.entries(entry.sold ?? {}).flatMap(([kitchen, shops]) =>
    checkSold(shops, { densities: densities ?? [], units: unitsOf(kitchen) }).map((fault) => ({
      ...fault,
      path: ['sold', kitchen, ...fault.path],
    })),
  );
  return [
    ...sold,
    ...checkDensities(entry),
    ...checkPieces(entry),
    ...checkContents(entry),
    ...checkAllergens(entry, base),
  ];
}

function checkSold(sold: SoldYaml, weighing: Weighing): Fault[] {
  const bought = sold.packs !== undefined || sold.loose === true || sold.singly === true || sold.tap === true;
  if (sold['not-sold'] === true && bought) {
    return [
      { path: ['not-sold'], message: '`not-sold` stands beside a way of buying the food. Write one or the other' },
    ];
  }
  if (sold['not-sold'] !== true && !bought) {
    return [
      {
        path: [],
        message:
          'This says neither how the food is sold nor that it is not. Write `packs`, `loose`, `singly`, `tap` or `not-sold`',
      },
    ];
  }
  const packs = sold.packs ?? [];
  return [
    ...packs.flatMap((pack, index) =>
      checkPack(pack, weighing, packs[index - 1]).map((fault) => ({ ...fault, path: ['packs', index, ...fault.path] })),
    ),
    ...twoUsual(packs),
  ];
}

/** One can is the usual can. */
function twoUsual(packs: readonly PackYaml[]): Fault[] {
  const usual = [...packs.entries()].filter(([, pack]) => pack.usual === true);
  return usual
    .filter(([, pack], at) => usual.slice(0, at).some(([, { word }]) => sameContainer(word, pack.word)))
    .map(([index, { word }]) => ({
      path: ['packs', index, 'usual'],
      message: `\`packs\` has two usual sizes of a ${word}. Keep one`,
    }));
}

function checkPack(pack: PackYaml, weighing: Weighing, before: PackYaml | undefined): Fault[] {
  const grams = packGrams(pack, weighing);
  if (grams === null) {
    return [
      {
        path: ['size'],
        message: `The weight of a pack of \`${pack.size}\` is not known. Write \`grams\`, the net weight`,
      },
    ];
  }
  const faults: Fault[] = [];
  if (pack.drained !== undefined && exactOf(pack.drained).gt(grams)) {
    faults.push({
      path: ['drained'],
      message: `\`drained\` takes no more than the net weight, ${grams} g, not \`${pack.drained}\``,
    });
  }
  const lighter = before && packGrams(before, weighing);
  if (lighter?.gt(grams))
    faults.push({
      path: ['size'],
      message: `\`packs\` takes the smallest first: \`${pack.size}\` is smaller than the one before`,
    });
  return faults;
}

function checkDensities({ densities = [] }: FoodEntry): Fault[] {
  return repeats(
    densities.map(({ form }: { form?: Density['form'] | undefined }) => form ?? 'as it usually comes'),
  ).map(([index, form]) => ({
    path: ['densities', index],
    message: `\`densities\` has two for the form \`${form}\`. Keep one`,
  }));
}

function checkPieces({ pieces = [] }: FoodEntry): Fault[] {
  return repeats(pieces.map(({ unit, size }) => (size === undefined ? unit : `${size} ${unit}`))).map(
    ([index, piece]) => ({
      path: ['pieces', index],
      message: `\`pieces\` has two for \`${piece}\`. Keep one`,
    }),
  );
}

function checkContents({ contains = [] }: FoodEntry): Fault[] {
  const whole = contains.reduce((sum, { share }) => sum.plus(exactOf(share)), exactOf(0));
  return whole.gt(1)
    ? [
        {
          path: ['contains'],
          message: `The shares of \`contains\` make ${whole}, more than the whole. Write fractions of 1`,
        },
      ]
    : [];
}

/** A site may know of more than the larder, and never of less: whoever cooks by a page trusts what it says of a stand-in. */
function checkAllergens({ allergens }: FoodEntry, base: Food | undefined): Fault[] {
  const missing = (base?.allergens ?? []).filter((allergen) => allergens?.some((each) => each === allergen) === false);
  if (missing.length === 0) return [];
  const list = missing.map((each) => `\`${each}\``).join(', ');
  return [
    {
      path: ['allergens'],
      message: `\`allergens\` leaves out ${list}, which the larder lists of this food. Add it, or give a food without it an id of its own`,
    },
  ];
}

function repeats(names: readonly string[]): [number, string][] {
  return [...names.entries()].filter(([index, name]) => names.indexOf(name) < index);
}
