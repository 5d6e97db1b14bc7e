import {
  allergensAdded,
  allergensOf,
  Exact,
  type Food,
  type FoodName,
  type Pack,
  type Sold,
  soldIn,
} from '@retare/core';
import type { Larder } from '@retare/larder';
import type { Row, Section } from './section.js';

/** Which kitchens an explanation speaks of. */
export interface Explaining {
  larder: Larder;
  kitchens: readonly string[];
}

/** Everything that the larder says of a food, with its sources. */
export function explainFood(food: Food, { larder, kitchens }: Explaining): Section[] {
  const sections: Section[] = [
    { title: 'names', rows: nameRows(food, kitchens) },
    { title: 'note', rows: food.note === undefined ? [] : [{ text: food.note, source: '' }] },
    { title: 'role', rows: [{ text: roleText(food), source: '' }] },
    { title: 'weights', rows: densityRows(food, larder) },
    { title: 'pieces', rows: food.pieces.map(({ unit, size, grams, source }) => pieceRow(unit, size, grams, source)) },
    { title: 'keeps', rows: [{ text: keepsText(food), source: food.keeps.source }] },
    { title: 'core temperature', rows: coreRows(food, { larder, kitchens }) },
    { title: 'allergens', rows: [...allergensOf(food, larder.foods)].map((text) => ({ text, source: '' })) },
    {
      title: 'contains',
      rows: food.contains.map(({ food: of, share, source = '' }) => ({ text: `${share} ${of}`, source })),
    },
    ...kitchens.map((id) => ({ title: `sold in ${id}`, rows: soldRows(food, id, larder) })),
  ];
  return sections.filter(({ rows }) => rows.length > 0);
}

const written = ({ one, many }: FoodName): string => (one === many ? one : `${one}/${many}`);

function nameRows({ names }: Food, kitchens: readonly string[]): Row[] {
  return [...kitchens, 'any'].flatMap((id) => {
    const own = names[id] ?? [];
    return own.length === 0 ? [] : [{ text: `${id}: ${own.map(written).join(', ')}`, source: '' }];
  });
}

const roleText = ({ role, pours, byEye }: Food): string => {
  const divided = byEye === null ? '' : ', divided by eye without a scale';
  return pours ? `${role}, measured like a liquid` : `${role}${divided}`;
};

function densityRows({ densities }: Food, larder: Larder): Row[] {
  const cup = larder.kitchens.get('us')?.units.cup ?? new Exact(0);
  return densities.map(({ form, gramsPerMl, source, note }) => ({
    text: `${form ?? 'as it usually comes'}: ${short(gramsPerMl.times(cup))} g a US cup, ${short(gramsPerMl)} g/ml`,
    source: note === undefined ? source : `${source}; ${note}`,
  }));
}

const short = (value: Exact): string => value.toSignificantDigits(4).toString();

function pieceRow(unit: string, size: string | null, grams: Exact, source: string): Row {
  const one = unit === 'count' ? 'one' : `one ${unit}`;
  return { text: `${size === null ? one : `${one}, ${size}`}: ${grams} g`, source };
}

function keepsText({ keeps: { where, days, freezes, leastGrams } }: Food): string {
  const long = days === null ? '' : `, ${days} ${days === 1 ? 'day' : 'days'} once opened`;
  return `${where}${long}${freezes ? ', freezes' : ''}; less than ${leastGrams} g is not worth keeping`;
}

function coreRows({ coreClass }: Food, { larder, kitchens }: Explaining): Row[] {
  if (coreClass === null) return [];
  return kitchens.flatMap((id) => {
    const safe = larder.kitchens.get(id)?.safe.find((each) => each.class === coreClass);
    if (safe === undefined) return [];
    const hold = safe.hold === '' ? '' : `, ${safe.hold}`;
    const text = `${id}: ${safe.temperature} °${safe.unit}${hold} for ${safe.name}, by ${safe.authority}; follow your own food-safety authority`;
    return [{ text, source: safe.source }];
  });
}

function soldRows(food: Food, kitchen: string, larder: Larder): Row[] {
  const sold = soldIn(food, kitchen);
  if (sold === null || sold === undefined) return [];
  const { source } = sold;
  if (!sold.sold) return [{ text: 'not sold', source }, ...sold.standIns.map((each) => standInRow(food, each, larder))];
  return [
    ...sold.packs.map((pack) => ({ text: packText(pack), source })),
    ...(sold.loose ? [{ text: 'loose, by weight', source }] : []),
    ...(sold.singly ? [{ text: 'by the piece', source }] : []),
    ...(sold.tap ? [{ text: 'from the tap, or made at home', source }] : []),
  ];
}

function packText({ size, unit, word, grams, drainedGrams, whole, usual, marks }: Pack): string {
  const drained = drainedGrams === null ? '' : `, ${drainedGrams} g drained`;
  const marked = marks === null ? '' : `, marked every ${marks.size} ${marks.unit} (${short(marks.grams)} g)`;
  const use = { yes: 'used whole', half: 'used whole or half', no: 'any part is used' }[whole];
  return `${size} ${unit} ${word}: ${short(grams)} g${drained}${marked}, ${use}${usual ? ', the usual one' : ''}`;
}

function standInRow(food: Food, standIn: Sold['standIns'][number], larder: Larder): Row {
  const parts = standIn.parts.map(({ food: of, share }) => `${share} ${of}`).join(' + ');
  const foods = standIn.parts.flatMap((part) => larder.foods.get(part.food) ?? []);
  const added = allergensAdded(food, foods, larder.foods);
  return {
    text: `stand-in: ${parts}${added.length === 0 ? '' : `; adds ${added.join(', ')}`}`,
    source: standIn.source,
  };
}
