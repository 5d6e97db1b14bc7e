import { areSpeltAlike } from '../../food/spelling.js';
import type { Line } from '../../recipe/recipe.js';
import { servedBy } from '../line/foods-in.js';
import type { Edit, VersionLine, VersionPart, VersionSteps } from '../version.js';
import { hasWords } from './has-words.js';

/**
 * Ingredient lines whose food has another name here show the method's word in brackets, `coriander (cilantro)`, where the method is
 * not this kitchen's own and says that word. Where several foods, or a part of another line's, take the food's place, each says so.
 */
export function inBrackets(parts: readonly VersionPart[], steps: readonly VersionSteps[]): VersionPart[] {
  const prose = steps
    .flatMap(({ steps: each, from }) => [each.native, ...each.authored].filter((method) => method.kitchen === from))
    .map((method) => ` ${method.prose.toLowerCase()} `)
    .join(' ');
  const says = saying(prose);
  return parts.map((part) => ({ ...part, lines: part.lines.map((line) => inBracketsOf(line, part.lines, says)) }));
}

function inBracketsOf(line: VersionLine, all: readonly VersionLine[], says: (name: string) => boolean): VersionLine {
  const { name } = line.line;
  const served = servedBy(line, all).flatMap((each) => each.line.name?.text.trim() ?? []);
  const partly = served.filter(says);
  const forOthers = partly.length === 0 ? '' : ` (part of it for the ${partly.join(' and the ')})`;
  const said = name !== null && says(name.text) ? name.text.trim() : null;
  const one = said === null ? '' : ` (${said})`;
  // A bare name behind another food could be read as the kind that is meant of it.
  const apart = said === null || line.food === line.line.food ? one : ` (for the ${said})`;
  return {
    ...line,
    edits: behind(bracketed(line.edits, line.line, one), line.line, forOthers),
    alone: behind(bracketed(line.alone, line.line, apart), line.line, forOthers),
    also: line.also.map((food) => ({ ...food, alone: bracketed(food.alone, line.line, apart) })),
  };
}

/**
 * Behind the words that take the name's place, or the whole line's; `granulated sugar` says the method's `sugar` itself, and chilli flakes
 * are chili flakes.
 */
function bracketed(edits: readonly Edit[], { name, text }: Line, bracket: string): Edit[] {
  const said = name?.text ?? '';
  return edits.map((edit) => {
    const isWhole = edit.start === 0 && edit.end === text.length && !edit.text.startsWith('(');
    const isName = name !== null && edit.start === name.span.start;
    const isNew = edit.text !== '' && !hasWords(edit.text, said) && !areSpeltAlike(edit.text, said);
    return isNew && (isName || isWhole) ? { ...edit, text: `${edit.text}${bracket}` } : edit;
  });
}

function behind(edits: readonly Edit[], { name }: Line, bracket: string): Edit[] {
  if (name === null || bracket === '') return [...edits];
  const own = edits.find(({ start, end }) => start <= name.span.start && end >= name.span.end);
  if (own !== undefined)
    return edits.map((edit) => (edit === own ? { ...edit, text: `${edit.text}${bracket}` } : edit));
  return [...edits, { start: name.span.end, end: name.span.end, text: bracket }];
}

/** Looks a name up once, however many lines have it. */
function saying(prose: string): (name: string) => boolean {
  const known = new Map<string, boolean>();
  return (name) => {
    const found = known.get(name) ?? hasName(prose, name);
    known.set(name, found);
    return found;
  };
}

/** Whether the prose has the word, not as the end of a longer one. */
function hasName(prose: string, name: string): boolean {
  const folded = name.trim().toLowerCase();
  for (let at = prose.indexOf(folded); at >= 0; at = prose.indexOf(folded, at + 1)) {
    if (!/\p{L}/u.test(prose[at - 1] ?? ' ')) return true;
  }
  return false;
}
