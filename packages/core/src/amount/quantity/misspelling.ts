/** Whether a word differs from another by one letter too many, missing, wrong, or swapped with the next. */
export function isOneSlipFrom(word: string, known: string): boolean {
  if (Math.abs(word.length - known.length) > 1 || word === known) return false;
  let at = 0;
  while (at < word.length && word[at] === known[at]) at += 1;
  const rest = (text: string, from: number): string => text.slice(from);
  if (word.length > known.length) return rest(word, at + 1) === rest(known, at);
  if (word.length < known.length) return rest(word, at) === rest(known, at + 1);
  if (rest(word, at + 1) === rest(known, at + 1)) return true;
  return word[at] === known[at + 1] && word[at + 1] === known[at] && rest(word, at + 2) === rest(known, at + 2);
}
