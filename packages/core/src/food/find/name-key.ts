const accents = /\p{M}/gu;
const others = /[^\p{L}\p{N}%]+/gu;
const plainAscii = /^[a-z0-9% ]*$/;

/** A name as it is looked up: small letters without accents and apostrophes, one space between words, `tinned` as `canned`. */
export function nameKey(text: string): string {
  const small = text.toLowerCase();
  // Most names are plain letters: what follows is the slow half.
  const folded = plainAscii.test(small)
    ? small
    : small.normalize('NFKD').replace(accents, '').replace(/['’]/g, '').replace(others, ' ').trim();
  return folded.includes('tinned') ? folded.replace(/\btinned\b/g, 'canned') : folded;
}

/** A key whose last word is made singular. */
export function singularKey(key: string): string {
  const at = key.lastIndexOf(' ') + 1;
  return key.slice(0, at) + singularWord(key.slice(at));
}

function singularWord(word: string): string {
  if (!word.endsWith('s') || word.length < 4) return word;
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:oes|ches|shes|xes|sses)$/.test(word)) return word.slice(0, -2);
  return word.endsWith('ss') ? word : word.slice(0, -1);
}
