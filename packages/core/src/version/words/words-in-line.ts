import type { LineReading, Quantity } from '../../amount/reading.js';
import { isMassUnit } from '../../amount/size.js';
import { firstStatement, type Stated, sameStated, statedIn, type Term } from '../../amount/stated.js';
import { plural, writeStated, writeStatement, writeTerm } from '../../amount/write.js';
import type { Exact } from '../../exact.js';
import type { Food } from '../../food/food.js';
import { type HowMany, inNumber, translateName } from '../../food/name.js';
import { partOfEgg, sameEggs } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Line } from '../../recipe/recipe.js';
import type { Conversion } from '../convert/convert-amount.js';
import { saysTheSame } from '../convert/own-measure.js';
import { takesPartOfEgg } from '../egg/part-of-egg.js';
import type { Edit, PlacedProblem } from '../version.js';
import { againInWords, saidAgain } from './again-in-words.js';
import { isLoneSpoon } from './ambiguous-unit.js';
import { countWordEdits, nameBehindCountWord } from './count-word-edits.js';
import { amountEdits } from './edit.js';
import { eggSizeInWords, withoutEggSize } from './egg-size-in-words.js';
import { furtherOfLine } from './further.js';
import { hasWords } from './has-words.js';
import { keptCounts } from './kept-counts.js';
import { lengthEach } from './length-each.js';
import { packedInWords } from './packed-in-words.js';

/** How an amount came to be another one. */
export interface Restated {
  conversion?: Conversion;
  /** The amount there over the native one; null where that is not known. */
  share?: Exact | null;
}

/** What to replace in a line's words so that it states another amount. */
export function amountInWords(
  line: Line,
  stated: Stated | null,
  kitchen: Kitchen,
  { conversion, share = null }: Restated = {},
): Edit[] {
  if (stated === null || line.reading.amounts.length === 0) return [];
  const isEgg = partOfEgg(line.food) !== null && stated.pack === null;
  const stands = readsTheSame(line, stated, conversion) && !isLoneSpoon(line) && !(isEgg && weighOtherwise(conversion));
  const size = isEgg && !isBeaten(line, stated) ? eggSizeInWords(line, stated.eggSize, kitchen, stands) : null;
  const spoken = size === null ? stated : { ...stated, eggSize: size.beforeName };
  const counted = countWordEdits(line, stated, stands, kitchen);
  // A second statement in a unit that nobody there reads, nor in its own kitchen, falls away.
  const isSayable = conversion === undefined || saidAgain(line, conversion).every(({ text }) => text !== null);
  const edits =
    stands && isSayable
      ? [...(counted ?? []), ...againInWords(line, conversion)]
      : (counted ??
        lengthEach(line, stated, kitchen) ??
        sizeBehind(line, stated) ??
        rewritten(line, writeStated(spoken, kitchen), share));
  const packed = stands && isSayable ? [] : packedInWords(line, stated);
  return [...edits, ...packed, ...(size?.edits ?? (isEgg ? withoutEggSize(line) : []))];
}

/** Another amount in the place of the author's; how many pieces that is stays said. */
function rewritten(line: Line, text: string, share: Exact | null): Edit[] {
  const kept = keptCounts(line, share);
  return amountEdits(line.reading, text).filter(
    (edit) => !kept.some(({ start, end }) => start === edit.start && end === edit.end),
  );
}

/** Pieces whose weight stands behind them: the number and the weight are replaced where they stand. Null where it stands before them. */
function sizeBehind({ reading }: Line, { statements, pack }: Stated): Edit[] | null {
  const [counted] = reading.amountSpans;
  if (reading.pack === null || pack === null || counted === undefined || pack.word !== '') return null;
  if (reading.pack.span.start < counted.end || !isMassUnit(pack.unit)) return null;
  const count = statements[0] ?? [];
  const each = { low: pack.size, high: pack.sizeHigh ?? null, unit: pack.unit };
  return [
    { ...counted, text: writeStatement(count) },
    { ...reading.pack.span, text: writeTerm(each) },
  ];
}

/** A further statement of the same amount (`1¼ tsp (3.5 g)`) is as true in the other kitchen, but cups differ by a twentieth. */
function readsTheSame({ reading }: Line, stated: Stated, conversion: Conversion | undefined): boolean {
  const own = statedIn(reading);
  const isSaid = (term: Term): boolean =>
    conversion === undefined || saysTheSame(term, conversion.native, conversion.kitchen);
  if (own?.statements[0]?.every(isSaid) === false) return false;
  if (own === null || sameStated(own, stated)) return own !== null;
  return own.statements[0]?.[0]?.unit !== 'cup' && sameStated(firstStatement(own), stated);
}

/** What the author's eggs weigh is not what those of other shops do. */
function weighOtherwise(conversion: Conversion | undefined): boolean {
  return conversion !== undefined && !sameEggs(conversion.native, conversion.kitchen);
}

/** The kitchen's own name of the food, where it has another, and in another number where two eggs take the place of one. */
export function nameInWords(line: Line, stated: Stated | null, kitchen: Kitchen): Edit[] {
  const { food, reading } = line;
  const name = nameWithoutSize(line);
  if (food === null || name === null) return [];
  if (isBeaten(line, stated)) return [{ ...name.span, text: beatenName(line, food, name.text) }];
  const { text: written, span } = name;
  const isHead = line.text.slice(0, span.start).trim() === '';
  // A capital is that of the line's head.
  const spoken = isHead ? written : `${written.charAt(0).toLowerCase()}${written.slice(1)}`;
  const translated = nameBehindCountWord(line, kitchen) ?? translateName(food, spoken, kitchen.id, howMany(reading));
  const [was, is] = [severalIn(statedIn(reading)), severalIn(stated)];
  const renumbered = was === null || is === null || was === is ? null : inNumber(food, translated ?? written, is);
  const named = withoutPiece(renumbered ?? translated ?? written, stated) ?? renumbered ?? translated;
  if (named === null) return [];
  const text = saidOnce(named, line.text.slice(0, span.start), line.text.slice(span.end));
  return [{ start: span.start, end: span.end + saidInBrackets(line.text.slice(span.end), text), text }];
}

/** `2 × 275 g sheets puff pastry`, whose name had the word already; null where it has none. */
function withoutPiece(name: string, stated: Stated | null): string | null {
  const word = stated?.pack?.word ?? '';
  const at = name.lastIndexOf(' ');
  const last = name.slice(at + 1).toLowerCase();
  return word !== '' && at > 0 && (last === word || last === plural(word)) ? name.slice(0, at) : null;
}

/** `large eggs` are eggs, whose size is worded by itself. */
function nameWithoutSize({ text, name, reading: { size } }: Line): Line['name'] {
  if (name === null || size === null || size.span.start !== name.span.start || size.span.end >= name.span.end)
    return name;
  const rest = text.slice(size.span.end, name.span.end);
  const start = size.span.end + rest.length - rest.trimStart().length;
  return { text: rest.trimStart(), span: { start, end: name.span.end } };
}

/** A part of an egg that is measured in the other kitchen. */
function isBeaten({ reading, food }: Line, stated: Stated | null): boolean {
  return takesPartOfEgg(reading, food) && stated?.statements[0]?.[0]?.unit !== 'count';
}

/** What is measured is one thing, and a whole egg has to be beaten for it: `75 g beaten egg`. */
function beatenName({ text }: Line, food: Food, written: string): string {
  const one = inNumber(food, written, false) ?? written;
  return partOfEgg(food)?.equals(1) && !/\b(?:beaten|whisked)\b/i.test(text) ? `beaten ${one}` : one;
}

/** A name without the words that its line says beside it: no `fresh fresh coriander`, nor `pasta shells shells`. */
function saidOnce(name: string, before: string, behind: string): string {
  const [first = '', ...others] = name.split(' ');
  if (others.length > 0 && ` ${before.toLowerCase()}`.endsWith(` ${first.toLowerCase()} `)) return others.join(' ');
  const last = others.at(-1)?.toLowerCase();
  const next = /^ (\p{L}+)/u.exec(behind)?.[1]?.toLowerCase();
  return last !== undefined && last === next ? [first, ...others.slice(0, -1)].join(' ') : name;
}

/** How long a bracket behind a name is that says the very word that takes its place: `cilantro (coriander)`. */
function saidInBrackets(behind: string, name: string): number {
  const close = behind.startsWith(' (') ? behind.indexOf(')') : -1;
  return close > 0 && hasWords(name, behind.slice(2, close)) ? close + 1 : 0;
}

/** Whether more than one piece is counted: `1½ onions`, `½ onion`; null where none are. */
function severalIn(stated: Stated | null): boolean | null {
  const term = stated?.statements[0]?.[0];
  if (stated === null || stated.pack !== null || term?.unit !== 'count') return null;
  return (term.high ?? term.low).greaterThan(1);
}

/** A weight of a thing that is counted is of several: `500 g courgettes`. A cup of it is not counted. */
function howMany({ amounts: [amount], pack }: LineReading): HowMany {
  if (amount === undefined) return 'uncounted';
  if (amount.unit !== 'count' || pack !== null) return isMassUnit(amount.unit) ? 'many' : 'uncounted';
  return (amount.high ?? amount.low).gt(1) ? 'many' : 'one';
}

/**
 * A further quantity that cannot be stated in the kitchen is a finding: a reader would take it as a unit of their own.
 *
 * @param edits What is replaced in the line: a second statement that falls away is no finding.
 */
export function unconverted(line: Line, edits: readonly Edit[], conversion: Conversion): PlacedProblem[] {
  const stays = ({ span }: Quantity): boolean =>
    !edits.some(({ start, end }) => start <= span.start && end >= span.end);
  const again = saidAgain(line, conversion).flatMap(({ quantity, text }) => (text === null ? [quantity] : []));
  const further = line.reading.further.filter((quantity) => furtherOfLine(quantity, line, conversion) === null);
  return [...again, ...further].filter(stays).map((quantity) => ({
    span: quantity.span,
    problem: {
      rule: 'unmeasurable',
      reason: 'no-tool',
      text: line.text.slice(quantity.span.start, quantity.span.end),
      term: quantity,
      food: line.food,
      nearest: [],
    },
  }));
}
