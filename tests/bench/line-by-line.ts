import {
  dimensionOf,
  type Exact,
  Exact as ExactNumber,
  type Kitchen,
  type Line,
  type Recipe,
  readingIn,
  readLine,
  type Setting,
  type Stated,
  statedIn,
  type Term,
  type Version,
  versionFor,
  writeStated,
} from '@retare/core';

/**
 * What converting line by line gives, to the nearest 5 g, 5 ml or ¼ cup: every line by itself, packs by the size on their label, spoons
 * and pieces as they are. It is written down as an author would write it and judged as an author's own version.
 */
export function lineByLine(recipe: Recipe, kitchen: Kitchen, setting: Setting): Version {
  const native = versionFor(recipe, recipe.kitchen, setting);
  const parts = recipe.parts.map((part, at) => {
    const lines = part.native.lines.map((line, index): Line => {
      const version = native.parts[at]?.lines[index];
      const stated = version === undefined ? null : convert(line, version.native, kitchen);
      return stated === null ? line : written(line, stated, kitchen);
    });
    return { ...part, authored: [{ ...part.native, key: `${part.native.key}-author`, kitchen: kitchen.id, lines }] };
  });
  return versionFor({ ...recipe, parts }, kitchen.id, setting);
}

/** The line as its author would write it with another amount. */
function written(line: Line, stated: Stated, kitchen: Kitchen): Line {
  const name = line.name?.text ?? '';
  const text = `${writeStated(stated, kitchen)} ${name}, ${line.reading.prep}`.replace(/, $/, '');
  return { ...line, text, reading: readLine(text, readingIn(kitchen)) };
}

function convert(
  line: Line,
  weighed: { grams: Exact | null; millilitres: Exact | null },
  kitchen: Kitchen,
): Stated | null {
  const stated = statedIn(line.reading);
  const term = stated?.statements[0]?.[0];
  if (stated == null || term === undefined) return null;
  const plain: Stated = { statements: [[term]], pack: stated.pack, eggSize: null, approx: false };
  if (stated.pack !== null) return { ...plain, pack: inOwnUnits(stated.pack, kitchen) };
  const dimension = dimensionOf(term.unit);
  if (dimension !== 'mass' && dimension !== 'volume') return plain;
  if (term.unit === 'tsp' || term.unit === 'tbsp') return plain;
  const grams = weighed.grams;
  const millilitres = weighed.millilitres;
  const pours = line.food?.pours ?? false;
  if (kitchen.scale !== null) {
    if (pours && millilitres !== null) return one(to(millilitres, '5'), 'ml');
    return grams === null ? (millilitres === null ? plain : one(to(millilitres, '5'), 'ml')) : one(to(grams, '5'), 'g');
  }
  const cup = kitchen.units.cup;
  if (millilitres !== null && cup !== undefined) return one(to(millilitres.dividedBy(cup), '0.25'), 'cup');
  return plain;
}

/** The label's size in the units of the kitchen, to the nearest 5. */
function inOwnUnits(pack: NonNullable<Stated['pack']>, kitchen: Kitchen): Stated['pack'] {
  const metric = kitchen.writes.mass.includes('g');
  const ounces = pack.unit === 'oz' || pack.unit === 'lb';
  if (metric && ounces) {
    const grams = pack.size.times(pack.unit === 'lb' ? '453.59237' : '28.349523125');
    return { ...pack, size: to(grams, '5'), unit: 'g' };
  }
  if (!metric && (pack.unit === 'g' || pack.unit === 'kg')) {
    const grams = pack.size.times(pack.unit === 'kg' ? 1000 : 1);
    return { ...pack, size: to(grams.dividedBy('28.349523125'), '0.5'), unit: 'oz' };
  }
  return pack;
}

function to(value: Exact, step: string): Exact {
  return ExactNumber.max(value.dividedBy(step).round(), 1).times(step);
}

function one(low: Exact, unit: Term['unit']): Stated {
  return { statements: [[{ low, high: null, unit }]], pack: null, eggSize: null, approx: false };
}
