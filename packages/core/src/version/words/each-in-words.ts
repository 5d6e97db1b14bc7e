import { writeStated } from '../../amount/write.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import type { Edit, VersionLine } from '../version.js';

/**
 * The words of a line that states one amount for each of several foods: one amount as long as it is the same for all, and otherwise each
 * its own: `1 cup each flour and sugar` are 125 g flour and 200 g sugar.
 *
 * @param parts The line's foods, its first one first.
 */
export function eachInWords(parts: readonly VersionLine[], kitchen: Kitchen): Edit[] {
  const each = parts[0]?.line.each;
  const edits = parts.map((part) => part.edits);
  const isChanged = parts.some((part) => part.edits.some((edit) => isAmount(edit, part)));
  if (each === undefined || !isChanged || parts.some(({ stated }) => stated === null)) return edits.flat();
  const texts = parts.map(({ stated }) => (stated === null ? '' : writeStated(stated, kitchen)));
  const isSame = parts.every(({ food, line }, at) => food === line.food && texts[at] === texts[0]);
  return parts.flatMap((part, at): Edit[] => {
    const [span] = part.line.reading.amountSpans;
    const text = texts[at] ?? '';
    const apart = at === 0 && !isSame ? [{ ...each, text: ' ' }] : [];
    // The words of several foods that stand in for one state their amounts themselves.
    if (span === undefined || part.also.length > 0) return [...part.edits, ...apart];
    const others = part.edits.filter((edit) => !isAmount(edit, part));
    const { name } = part.line;
    // `flour and sugar, 1 cup each` has its amount behind: told apart, each goes before its food.
    if (at === 0 && !isSame && name !== null && name.span.start < span.start)
      return [
        { start: name.span.start, end: name.span.start, text: `${text} ` },
        { start: commaBefore(part, span.start), end: each.end, text: '' },
        ...others,
      ];
    if (at === 0) return [{ ...span, text }, ...apart, ...others];
    return isSame ? others : [{ ...span, text: `${text} ` }, ...others];
  });
}

function commaBefore({ line: { text } }: VersionLine, at: number): number {
  return /,? ?$/.exec(text.slice(0, at))?.index ?? at;
}

function isAmount({ start, end }: Edit, { line: { reading } }: VersionLine): boolean {
  return reading.amountSpans.some((span) => span.start === start && span.end === end);
}
