/** A statement of the larder with where it is from; empty where the statement needs no source. */
export interface Row {
  text: string;
  source: string;
}

/** What an entry says of one matter. */
export interface Section {
  title: string;
  rows: readonly Row[];
}

/** Sections as text: a source stands behind its statement, once where several have it. */
export function sectionText({ title, rows }: Section): string {
  const sources = new Set(rows.map(({ source }) => source));
  const [only = ''] = sources;
  const isShared = sources.size === 1 && only !== '';
  const lines = rows.map(({ text, source }) => `    ${text}${isShared || source === '' ? '' : `  [${source}]`}`);
  return [`  ${title}${isShared ? `  [${only}]` : ''}`, ...lines].join('\n');
}
