import { type Around, vesselBeside } from '../../amount/mention/pan-shape.js';
import { readPan } from '../../amount/mention/read-pan.js';
import type { PanReading } from '../../amount/reading.js';
import type { Token, Tokens } from '../../amount/token/token.js';
import { tokenize } from '../../amount/token/tokenize.js';
import type { Kitchen, Pan } from '../kitchen.js';
import { writeSides } from './pan-size.js';

/** A pan of a kitchen that is named in a text, and the tokens of its name. */
interface Named {
  pan: Pan;
  from: number;
  to: number;
}

/**
 * A pan label as it is read in the kitchen where it stands: by its size, else by a trade name that says one (`half sheet pan`).
 *
 * @param around The text that it stands in: what is no word of the label may still say the shape.
 * @returns Null where neither stands there.
 */
export function readPanIn(text: string, kitchen: Kitchen, around?: Around): PanReading | null {
  return readPan(text, around === undefined ? '' : vesselBeside(around)) ?? byName(text, kitchen);
}

/** Sizes of a kitchen's usual pans whose name stands in a text that says none of them, as they are written there: `5 × 9 in`. */
export function sizesNamed(text: string, kitchen: Kitchen): string[] {
  const tokens = tokenize(text);
  const found = longest(named(tokens, kitchen));
  const sizes = found.map(({ pan: { sides, unit } }) => writeSides(sides, unit));
  return [...new Set(sizes)];
}

function byName(text: string, kitchen: Kitchen): PanReading | null {
  const tokens = tokenize(text);
  const [found] = longest(named(tokens, kitchen).filter(({ pan }) => pan.byName));
  if (found === undefined) return null;
  const { pan, from } = found;
  // `two half sheet pans` are two, not two and a half.
  const { kind, value } = tokens.at(from - 1);
  const count = from > 0 && kind === 'number' && value?.isInteger() ? value : null;
  // The `half` of a half sheet is its size; before any other name the size is put.
  const sizeWord = tokens.at(from);
  const isSize = sizeWord.lower === 'half' || sizeWord.lower === 'quarter';
  const isJoined = tokens.word(from + 1) === '-';
  return {
    sides: [...pan.sides],
    longFirst: false,
    depth: null,
    depthSpan: null,
    rim: null,
    count,
    unit: pan.unit,
    capacity: null,
    name: pan.name,
    shape: /\bsheet\b/.test(pan.name) ? 'sheet' : pan.shape === 'muffin' ? 'unknown' : pan.shape,
    span: {
      start: (count === null ? sizeWord : tokens.at(from - 1)).start,
      end: isSize ? tokens.at(isJoined ? from + 1 : from).end : sizeWord.start,
    },
  };
}

function named(tokens: Tokens, { pans }: Kitchen): Named[] {
  const words = tokens.list.flatMap((token, index) => (token.lower === '-' ? [] : [{ word: plainWord(token), index }]));
  return pans.flatMap((pan) => {
    if (pan.shape === 'muffin') return [];
    const name = tokenize(pan.name)
      .list.filter(({ lower }) => lower !== '-')
      .map(plainWord);
    const at = words.findIndex((_, start) => name.every((word, step) => words[start + step]?.word === word));
    const [first, last] = [words[at], words[at + name.length - 1]];
    return first === undefined || last === undefined ? [] : [{ pan, from: first.index, to: last.index }];
  });
}

/** Of `pie plate` and `deep-dish pie plate` the longer name is meant. */
function longest(found: readonly Named[]): Named[] {
  const most = Math.max(...found.map(({ from, to }) => to - from));
  return found.filter(({ from, to }) => to - from === most);
}

/** Whether a kitchen has a pan of that trade name, whose size it says there. */
export function isNamedIn(name: string, { pans }: Kitchen): boolean {
  const words = (text: string): string => tokenize(text).list.map(plainWord).join(' ');
  return pans.some((pan) => pan.byName && words(pan.name) === words(name));
}

/** One tin or several, and a tin is a pan. */
function plainWord({ lower }: Token): string {
  const one = lower.endsWith('s') ? lower.slice(0, -1) : lower;
  return one === 'tin' ? 'pan' : one;
}
