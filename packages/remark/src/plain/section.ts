/** What a heading, or a line that stands like one, says of what follows. */
export type Section = 'ingredients' | 'method' | 'kit' | 'other';

const ingredientWords = [
  'ingredient',
  'ingredients',
  'what goes in',
  'you need',
  'you will need',
  'youll need',
  'shopping',
];
const methodWords = [
  'direction',
  'directions',
  'instruction',
  'instructions',
  'method',
  'preparation',
  'steps',
  'how to',
  'procedure',
  'cooking',
  'assembly',
  'process',
];
const kitWords = ['equipment', 'tools', 'kit', 'utensils'];
const otherWords = [
  'notes',
  'note',
  'tips',
  'contribution',
  'nutrition',
  'variations',
  'storage',
  'serving',
  'faq',
  'links',
  'credits',
  'info',
];

/** The section that a heading opens; null for one that names a dish or a part of it. */
export function sectionOf(heading: string): Section | null {
  const words = ` ${heading
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}]+/gu, ' ')} `;
  const says = (list: readonly string[]): boolean => list.some((each) => words.includes(` ${each} `));
  if (says(ingredientWords)) return 'ingredients';
  if (says(kitWords)) return 'kit';
  if (says(methodWords)) return 'method';
  return says(otherWords) ? 'other' : null;
}
