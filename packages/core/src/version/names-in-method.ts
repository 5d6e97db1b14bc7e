import type { Edit, VersionPart, VersionSteps } from './version.js';

/**
 * Ingredient lines whose food has another name here show the method's word in brackets, `coriander (cilantro)`, where the method is
 * not this kitchen's own and says that word.
 */
export function inBrackets(parts: readonly VersionPart[], steps: readonly VersionSteps[]): VersionPart[] {
  const prose = steps
    .flatMap(({ steps: each, from }) => [each.native, ...each.authored].filter((method) => method.kitchen === from))
    .map((method) => ` ${method.prose.toLowerCase()} `)
    .join(' ');
  return parts.map((part) => ({
    ...part,
    lines: part.lines.map((line) => ({
      ...line,
      edits: line.edits.map((edit) => bracketed(edit, line.line.name, prose)),
    })),
  }));
}

function bracketed(edit: Edit, food: { text: string; span: { start: number } } | null, prose: string): Edit {
  if (food === null || edit.start !== food.span.start || edit.text === '') return edit;
  return says(prose, food.text) ? { ...edit, text: `${edit.text} (${food.text})` } : edit;
}

/** Whether the prose has the word, not as the end of a longer one. */
function says(prose: string, name: string): boolean {
  const folded = name.toLowerCase();
  for (let at = prose.indexOf(folded); at >= 0; at = prose.indexOf(folded, at + 1)) {
    if (!/\p{L}/u.test(prose[at - 1] ?? ' ')) return true;
  }
  return false;
}
