/** Sizes of a counted food, kept apart from its name. */
export const sizeWords: ReadonlySet<string> = new Set(['small', 'medium', 'large', 'jumbo']);

/** Abbreviated sizes, with the word they stand for. */
export const shortSizes: Readonly<Record<string, string>> = {
  sm: 'small',
  med: 'medium',
  lg: 'large',
  lrg: 'large',
  xl: 'extra large',
};

const words = `
  small medium large jumbo big little tiny huge giant extra regular standard normal sized size heaped heaping rounded
  level levelled leveled flat scant generous good full overfilled brimming packed loosely lightly firmly tightly well
  whole entire healthy hearty fat thick thin thinly fresh single individual short long average decent nice mini family
  tall more very knobby plump fistful ripe torn double metric sealed unopened frozen dried sm med lg lrg xl
`;

/** Words that may stand between a number and its unit: `2 heaped tbsp`, `1 small bunch`, `a whole head`. */
export const measureAdjectives: ReadonlySet<string> = new Set(words.trim().split(/\s+/u));
