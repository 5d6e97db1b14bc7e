/**
 * A label that is known to hold a size, with `8 in round` as `8-in round`: there `in` is no preposition. Every place stays where it was.
 */
export function hyphenedInch(label: string): string {
  return label.replace(/([\d¼½¾⅓⅔⅛⅜⅝⅞]) (?=in\b)/gu, '$1-');
}
