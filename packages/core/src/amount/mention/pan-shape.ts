import type { Exact } from '../../exact.js';
import type { PanReading } from '../reading.js';
import { readNumber } from '../token/number.js';
import type { Tokens } from '../token/token.js';
import { tokenize } from '../token/tokenize.js';
import { vesselKinds, vessels } from './mention-words.js';

/** The words that a label stands among. */
export interface Around {
  before: string;
  behind: string;
}

type Shape = PanReading['shape'];

const shapes = new Map<string, Shape>(
  Object.entries({
    round: 'round rounds circular',
    springform: 'springform springforms',
    square: 'square squares',
    rectangle: 'rectangle rectangular oblong',
    loaf: 'loaf',
    pie: 'pie tart flan quiche',
    tube: 'bundt tube ring',
    sheet: 'sheet sheets tray trays',
    stove:
      'skillet skillets frying pizza wok griddle sauté saute paella saucepan saucepans pot pots stockpot dutch kettle cooker',
    deep: 'casserole soufflé souffle basin basins bowl bowls mould moulds mold molds ramekin ramekins terrine cocotte crock jar jars jug mug mugs',
  } satisfies Partial<Record<Shape, string>>).flatMap(([shape, words]) =>
    words.split(' ').map((word): [string, Shape] => [word, shape as Shape]),
  ),
);

/** More words than these stand between a size and its vessel in no sentence. */
const furthest = 8;
/** Nobody fills more pans at once. */
const mostPans = 12;
/** Letters that hold as many words. */
const farthest = 90;
const moreKinds = new Set(
  'mini rimmed lidded fluted enamel pudding sandwich traybake slice gratin swiss cupcake cupcakes muffin muffins popover popovers bun'.split(
    ' ',
  ),
);
/** `a 9-inch pan and a pot` are two. */
const joints = new Set(['and', 'a', 'the']);

/** The shape that words for a pan say, `springform` before `round`. */
export function shapeIn(words: Tokens): Shape | undefined {
  const said = words.list.flatMap(({ lower }) => shapes.get(lower) ?? []);
  if (said.includes('springform')) return 'springform';
  // A casserole dish is a baking dish; what is called a casserole alone is a pot.
  const isDish = words.list.some(({ lower }) => lower === 'dish' || lower === 'dishes' || lower === 'pan');
  const isCasserole = words.list.some(({ lower }) => lower === 'casserole');
  return isDish && isCasserole ? said.find((each) => each !== 'deep') : said[0];
}

/** Whether words for a pan say that its rim is higher or lower than usual: `deep-dish pie plate`. */
export function rimSaid(words: Tokens): PanReading['rim'] {
  // `2 inches deep` says how deep.
  const isMeasured = words.list.some(({ kind }) => kind === 'number');
  const found = words.list.find(({ lower }, at) => {
    const isAdjective = !isMeasured || words.at(at + 1).kind === 'word' || words.word(at + 1) === '-';
    return (lower === 'deep' || lower === 'shallow') && isAdjective;
  });
  return found === undefined ? null : (found.lower as 'deep' | 'shallow');
}

/**
 * The words for the pan that stand beside its label: the `deep-dish pie plate` of `a :pan[9 in] deep-dish pie plate`, the `square baking
 * dish` of `a square baking dish, :pan[8×8 in]`; empty where none do.
 */
export function vesselBeside({ before, behind }: Around): string {
  const next = tokenize(behind.slice(0, farthest));
  const end = vesselFrom(next);
  if (end >= 0) return next.text.slice(0, next.at(end).end);
  const last = tokenize(before.slice(-farthest));
  const [from, to] = vesselUpTo(last);
  return to === 0 ? '' : last.text.slice(last.at(from).start, last.at(to - 1).end);
}

/** How many pans the words right before a label say, two and more: the `two` of `butter two :pan[8 in] round pans`. */
export function countBeside({ before }: Around): Exact | null {
  const tokens = tokenize(before.slice(-farthest));
  const number = readNumber(tokens, tokens.length - 1);
  const isCount = number !== null && !number.article && !number.fraction && number.value.isInteger();
  return isCount && number.value.greaterThan(1) && number.value.lessThanOrEqualTo(mostPans) ? number.value : null;
}

/** Index of the last word of a vessel that is named right at the beginning; -1 where none is. */
function vesselFrom(tokens: Tokens): number {
  let found = -1;
  for (let at = 0; at < Math.min(tokens.length, furthest); at += 1) {
    const word = tokens.word(at);
    if (isVessel(word)) found = at;
    else if (!isOfVessel(word)) break;
  }
  return found;
}

/** Where a vessel is named right before, with a comma or bracket between: `a square baking dish, `. */
function vesselUpTo(tokens: Tokens): [from: number, to: number] {
  const to = tokens.length - 1;
  const sign = tokens.word(to);
  const isApart = sign === ',' || sign === '(' || sign === ':';
  if (!isApart || !isVessel(tokens.word(to - 1))) return [0, 0];
  let from = to - 1;
  while (from > 0 && to - from < furthest && isOfVessel(tokens.word(from - 1))) from -= 1;
  return [from, to];
}

function isVessel(word: string): boolean {
  return vessels.has(word) || shapes.has(word) || word === 'plate' || word === 'plates';
}

function isOfVessel(word: string): boolean {
  return word === '-' || isVessel(word) || moreKinds.has(word) || (vesselKinds.has(word) && !joints.has(word));
}
