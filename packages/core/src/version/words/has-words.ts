/** Whether words stand in a name as they are, and not as a part of longer ones: `sugar` in `granulated sugar`. */
export function hasWords(name: string, words: string): boolean {
  const fold = (text: string): string => ` ${text.trim().toLowerCase()} `;
  return words.trim() !== '' && fold(name).includes(fold(words));
}
