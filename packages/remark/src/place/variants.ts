import type { PhrasingContent } from 'mdast';
import { inlineElement } from './element.js';

/** What one or more kitchens read. */
export interface Variant {
  kitchens: string[];
  children: PhrasingContent[];
}

/** Kitchens that read the same share one text. `same` says what makes two readings one. */
export function merged(
  readings: readonly { kitchen: string; same: string; children: () => PhrasingContent[] }[],
): Variant[] {
  const bySame = new Map<string, Variant>();
  for (const { kitchen, same, children } of readings) {
    const known = bySame.get(same);
    if (known === undefined) bySame.set(same, { kitchens: [kitchen], children: children() });
    else known.kitchens.push(kitchen);
  }
  return [...bySame.values()];
}

/** Variants side by side, of which style shows one; a text that all kitchens share needs no mark. */
export function sideBySide(variants: readonly Variant[], native: string): PhrasingContent[] {
  const [only, ...others] = variants;
  if (only === undefined) return [];
  if (others.length === 0) return only.children;
  return variants.map(({ kitchens, children }) => inlineElement('span', marks(kitchens, native), children));
}

/** Which kitchens a part of the page is for; the native one is what shows where nothing is chosen. */
export function marks(kitchens: readonly string[], native: string): { dataRetare: string; className?: string[] } {
  const own = kitchens.includes(native);
  return { dataRetare: kitchens.join(' '), ...(own ? { className: ['retare-native'] } : {}) };
}
