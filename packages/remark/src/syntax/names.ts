/** What an attribute may hold. */
export type AttributeKind = 'kitchen' | 'date' | 'words' | 'length' | 'count' | 'id';

/** An annotation: which form of directive it takes, and which attributes. */
export interface AnnotationShape {
  type: 'containerDirective' | 'leafDirective' | 'textDirective';
  attributes: Readonly<Record<string, AttributeKind>>;
}

/** Two blocks, six inline annotations and one marker. Nothing else is ours. */
export const annotations = {
  ingredients: {
    type: 'containerDirective',
    attributes: { kitchen: 'kitchen', anchor: 'words', cooked: 'date', from: 'words', id: 'id' },
  },
  method: { type: 'containerDirective', attributes: { kitchen: 'kitchen', cooked: 'date', from: 'words', id: 'id' } },
  amount: { type: 'textDirective', attributes: { of: 'words' } },
  oven: { type: 'textDirective', attributes: {} },
  core: { type: 'textDirective', attributes: { of: 'words' } },
  temp: { type: 'textDirective', attributes: {} },
  pan: { type: 'textDirective', attributes: { depth: 'length', count: 'count' } },
  length: { type: 'textDirective', attributes: {} },
  kitchens: { type: 'leafDirective', attributes: {} },
} as const satisfies Readonly<Record<string, AnnotationShape>>;

/** The name of an annotation of ours. */
export type AnnotationName = keyof typeof annotations;

/** Every name of ours. */
export const annotationNames: readonly string[] = Object.keys(annotations);

/** Whether a directive has a name of ours, in whatever form. */
export function isOurName(name: string): name is AnnotationName {
  return Object.hasOwn(annotations, name);
}

/** How an annotation of that name begins: `:oven[…]`, `::kitchens`, `:::method`. */
export function openingOf(name: AnnotationName): string {
  const { type } = annotations[name];
  if (type === 'textDirective') return `:${name}[…]`;
  return type === 'leafDirective' ? `::${name}` : `:::${name}`;
}

/** Whether a directive of that name and form is ours. */
export function isAnnotation(type: string, name: string): name is AnnotationName {
  return isOurName(name) && annotations[name].type === type;
}
