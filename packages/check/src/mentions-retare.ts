import { annotations } from 'remark-retare';

const openings = Object.entries(annotations).map(([name, { type }]) =>
  type === 'textDirective' ? `:${name}` : `::${name}`,
);

/** Whether a text may have an annotation of ours: most posts of a blog have none and need not be parsed. */
export function mentionsRetare(text: string): boolean {
  return text.includes('retare:') || openings.some((opening) => text.includes(opening));
}
