/** A kitchen's adjective with its article: `a UK`, `an Australian`. */
export function withArticle({ adjective }: { adjective: string }): string {
  return `${/^[AEIO]/.test(adjective) ? 'an' : 'a'} ${adjective}`;
}
