import type { Density, Food, FoodName, Kitchen } from '@retare/core';
import { exactOf } from '../schema/exact-number.js';
import type { DensityYaml, FoodEntry } from '../schema/food-schema.js';
import { buildSold } from './build-sold.js';

/** The volume units of a kitchen, by its id: those of `us` are what densities are stated per. None for `any`. */
export type UnitsOf = (kitchen: string) => Kitchen['units'];

/**
 * A food out of its checked data.
 *
 * @param base The food whose keys the entry overrides. Names and shops are overridden by kitchen, every other key whole.
 * @throws {RangeError} If a key is in neither: data that was not checked.
 */
export function buildFood(id: string, entry: FoodEntry, unitsOf: UnitsOf, base?: Food): Food {
  const needs = <Value>(key: string, value: Value | undefined): Value => {
    if (value === undefined) throw new RangeError(`Food ${id} was built without ${key}`);
    return value;
  };
  const densities = entry.densities?.map((density) => buildDensity(density, unitsOf('us'))) ?? base?.densities ?? [];
  return {
    id,
    names: { ...base?.names, ...mapValues(entry.names ?? {}, (names) => names.map(buildName)) },
    role: needs('role', entry.role ?? base?.role),
    ...noteOf(entry.note ?? base?.note),
    ...spoonedOf(entry.spooned ?? base?.spooned),
    ...cuppedOf(entry.cupped ?? base?.cupped),
    pours: entry.pours ?? base?.pours ?? false,
    byEye: entry['by-eye'] ?? base?.byEye ?? null,
    densities,
    pieces: entry.pieces?.map(buildPiece) ?? base?.pieces ?? [],
    keeps: entry.keeps === undefined ? needs('keeps', base?.keeps) : buildKeeping(entry.keeps),
    coreClass: entry.core ?? base?.coreClass ?? null,
    ...buildAllergens(entry, base),
    contains: entry.contains?.map(buildShare) ?? base?.contains ?? [],
    sold: {
      ...base?.sold,
      ...mapValues(entry.sold ?? {}, (sold, kitchen) => buildSold(sold, { densities, units: unitsOf(kitchen) })),
    },
  };
}

const noteOf = (note: string | undefined): Pick<Food, 'note'> => (note === undefined ? {} : { note });

const spoonedOf = (spooned: string | undefined): Pick<Food, 'spooned'> => (spooned === undefined ? {} : { spooned });

const cuppedOf = (cupped: string | undefined): Pick<Food, 'cupped'> => (cupped === undefined ? {} : { cupped });

function buildName(name: string): FoodName {
  const [one = '', many = one] = name.split('/').map((part) => part.trim());
  return { one, many };
}

/** A density's measure is a US one (USDA), or a millilitre. */
function buildDensity({ form, grams, per, source, note }: DensityYaml, us: Kitchen['units']): Density {
  const ml = per === 'ml' ? exactOf(1) : us[per];
  if (ml === undefined) throw new RangeError(`The us kitchen has no ${per}`);
  const gramsPerMl = exactOf(grams).dividedBy(ml);
  return { form: form ?? null, gramsPerMl, source, ...(note !== undefined && { note }) };
}

function buildPiece({ unit, size, grams, source }: NonNullable<FoodEntry['pieces']>[number]): Food['pieces'][number] {
  return { unit, size: size ?? null, grams: exactOf(grams), source };
}

function buildKeeping({ where, days, freezes, least, source }: NonNullable<FoodEntry['keeps']>): Food['keeps'] {
  return { where, days: days ?? null, freezes, leastGrams: exactOf(least), source };
}

/** A site may add to what the larder lists of a food, and never take away from it: what is added is kept apart. */
function buildAllergens({ allergens, contains }: FoodEntry, base: Food | undefined) {
  if (base === undefined) return { allergens: allergens ?? [] };
  if (allergens === undefined && contains === undefined)
    return {
      allergens: base.allergens,
      ...(base.allergensBySite !== undefined && { allergensBySite: base.allergensBySite }),
    };
  const bySite = (allergens ?? []).filter((allergen) => !base.allergens.includes(allergen));
  return {
    allergens: [...base.allergens, ...bySite],
    allergensBySite: [...(base.allergensBySite ?? []), ...bySite],
  };
}

function buildShare({ food, share, source }: NonNullable<FoodEntry['contains']>[number]): Food['contains'][number] {
  return { food, share: exactOf(share), ...(source !== undefined && { source }) };
}

function mapValues<From, To>(
  record: Readonly<Record<string, From>>,
  map: (value: From, key: string) => To,
): Record<string, To> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, map(value, key)]));
}
