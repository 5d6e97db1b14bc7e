const openings = ['servings', 'serves', 'makes', 'yield', 'yields', 'portions'];

/** What a plain post says that it makes: the line that begins with such a word, pictures and marks aside. */
export function makesIn(source: string): string | null {
  for (const line of source.split(/\r?\n/)) {
    const words = line
      .replace(/^[^\p{L}]+/u, '')
      .replaceAll('*', '')
      .trim();
    const opening = openings.find((each) => words.toLowerCase().startsWith(each));
    if (opening === undefined || words.length > 80) continue;
    const rest = words
      .slice(opening.length)
      .replace(/^[\s:]+/, '')
      .trim();
    if (/^(?:about |around |approx\.? |up to )?\d/.test(rest)) return rest;
  }
  return null;
}
