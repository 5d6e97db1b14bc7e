import {
  allergensAdded,
  allergensOf,
  type Density,
  type Exact,
  type Food,
  type FoodName,
  type Kitchen,
  type Pack,
  type Piece,
  type Sold,
} from '@retare/core';
import { element, escapeHtml } from './html.js';
import type { SourceNotes } from './source-notes.js';

/** What an article of the page needs beside its food. */
export interface Setting {
  foods: ReadonlyMap<string, Food>;
  kitchens: readonly Kitchen[];
  /** Millilitres of the cup that weights are shown for. */
  cup: Exact;
  notes: SourceNotes;
}

/** One food as HTML: names, weights, packs by kitchen and the rest, each value with its source. */
export function foodArticle(food: Food, setting: Setting): string {
  const { notes } = setting;
  const facts = [
    fact('names', namesHtml(food, setting)),
    fact('note', escapeHtml(food.note ?? '')),
    fact('role', escapeHtml(roleText(food))),
    fact('weights', listHtml(food.densities.map((each) => densityHtml(each, setting)))),
    fact('one weighs', listHtml(food.pieces.map((each) => pieceHtml(each, notes)))),
    fact(
      'contains',
      listHtml(
        food.contains.map(
          (each) =>
            escapeHtml(`${percent(each.share)} ${each.food}`) +
            (each.source === undefined ? '' : notes.mark(each.source)),
        ),
      ),
    ),
    fact('allergens', escapeHtml([...allergensOf(food, setting.foods)].join(', '))),
    fact('keeps', escapeHtml(keepsText(food)) + notes.mark(food.keeps.source)),
    fact(
      'core temperature',
      food.coreClass === null ? '' : escapeHtml(`as ${food.coreClass}: follow your own food-safety authority`),
    ),
    fact('sold', soldHtml(food, setting)),
  ];
  const words = Object.values(food.names)
    .flat()
    .map(({ one, many }) => `${one} ${many}`);
  return element('article', `${element('h3', escapeHtml(headOf(food)))}${element('dl', facts.join(''))}`, {
    id: food.id,
    'data-words': [...new Set([food.id, ...words.join(' ').toLowerCase().split(' ')])].join(' '),
  });
}

/** The name to head a food with: understood everywhere, else that of the first kitchen that has one. */
export function headOf({ id, names }: Food): string {
  const own = names.any?.[0] ?? names.us?.[0] ?? Object.values(names)[0]?.[0];
  return own?.many ?? id.replaceAll('-', ' ');
}

const fact = (name: string, html: string): string => (html === '' ? '' : element('dt', name) + element('dd', html));

const listHtml = (items: readonly string[]): string =>
  items.length === 0 ? '' : element('ul', items.map((item) => element('li', item)).join(''));

function roleText({ role, pours, byEye }: Food): string {
  const divided = byEye === null ? '' : ', a pack divided by eye where there is no scale';
  return pours ? `${role}, measured like a liquid` : `${role}${divided}`;
}

function namesHtml({ names }: Food, { kitchens }: Setting): string {
  const written = ({ one, many }: FoodName): string => (one === many ? one : `${one}/${many}`);
  const ids = ['any', ...kitchens.map(({ id }) => id)];
  const byText = new Map<string, string[]>();
  for (const id of ids) {
    const text = names[id]?.map(written).join(', ');
    if (text !== undefined) byText.set(text, [...(byText.get(text) ?? []), id === 'any' ? 'everywhere' : id]);
  }
  return listHtml([...byText].map(([text, of]) => `${element('b', of.join(' '))} ${escapeHtml(text)}`));
}

const short = (value: Exact): string => value.toSignificantDigits(3).toString();
const percent = (share: Exact): string => `${short(share.times(100))} %`;

function densityHtml({ form, gramsPerMl, source, note = '' }: Density, { cup, notes }: Setting): string {
  const text = `${form ?? 'as it comes'}: ${short(gramsPerMl.times(cup))} g a US cup (${short(gramsPerMl)} g/ml)`;
  return escapeHtml(text) + notes.mark(source) + (note === '' ? '' : ` ${element('small', escapeHtml(note))}`);
}

function pieceHtml({ unit, size, grams, source }: Piece, notes: SourceNotes): string {
  const one = [size, unit === 'count' ? 'one' : unit].filter((word) => word !== null).join(' ');
  return escapeHtml(`${one}: ${short(grams)} g`) + notes.mark(source);
}

function keepsText({ keeps: { where, days, freezes, leastGrams } }: Food): string {
  const long = days === null ? '' : `, ${days} ${days === 1 ? 'day' : 'days'} once opened`;
  return `${where}${long}${freezes ? ', freezes' : ''}; under ${leastGrams} g is not worth keeping`;
}

/** Kitchens whose shops sell it alike share a row. */
function soldHtml(food: Food, setting: Setting): string {
  const byHtml = new Map<string, string[]>();
  for (const { id } of setting.kitchens) {
    const sold = food.sold[id] ?? food.sold.any;
    if (sold === undefined) continue;
    const html = shopsHtml(food, sold, setting);
    byHtml.set(html, [...(byHtml.get(html) ?? []), id]);
  }
  return listHtml([...byHtml].map(([html, ids]) => `${element('b', ids.join(' '))} ${html}`));
}

function shopsHtml(food: Food, sold: Sold, { foods, notes }: Setting): string {
  const ways = [
    ...sold.packs.map(packText),
    ...(sold.loose ? ['loose'] : []),
    ...(sold.singly ? ['by the piece'] : []),
    ...(sold.tap ? ['from the tap or made at home'] : []),
    ...(sold.sold ? [] : ['not sold']),
  ];
  const standIns = sold.standIns.map((standIn) => {
    const parts = standIn.parts.map((part) => `${percent(part.share)} ${part.food}`).join(' and ');
    const instead = standIn.parts.flatMap((part) => foods.get(part.food) ?? []);
    const added = allergensAdded(food, instead, foods);
    return `; instead ${escapeHtml(parts + (added.length > 0 ? ` (adds ${added.join(', ')})` : ''))}${notes.mark(standIn.source)}`;
  });
  return escapeHtml(ways.join('; ')) + notes.mark(sold.source) + standIns.join('');
}

function packText({ size, unit, word, grams, drainedGrams, whole, usual }: Pack): string {
  const isWeight = ['g', 'kg'].includes(unit);
  const net = isWeight ? '' : ` (${short(grams)} g)`;
  const drained = drainedGrams === null ? '' : `, ${short(drainedGrams)} g drained`;
  const most = usual ? ', the usual one' : '';
  return `${size} ${unit} ${word}${net}${drained}${most}${whole === 'no' ? '' : whole === 'yes' ? ', used whole' : ', used by halves'}`;
}
