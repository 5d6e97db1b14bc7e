import { readFileSync } from 'node:fs';

/**
 * The reader's stylesheet for the kitchens that a site serves.
 *
 * @param kitchens Kitchen ids, lower-case letters, digits and hyphens.
 */
export function readerStyle(kitchens: readonly string[]): string {
  const base = readFileSync(new URL('../../page/base.css', import.meta.url), 'utf8');
  const minimal = base
    .replace(/\/\*[^*]*\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,>]) ?/g, '$1')
    .trim();
  return `${minimal}@layer retare{${kitchens.map(kitchenRules).join('')}}\n`;
}

/** With a kitchen chosen its texts show, and a native text that is not its own hides. `:has` needs no script. */
function kitchenRules(id: string): string {
  const chosen = `:root:has(.retare-choice [value="${id}"]:checked)`;
  return `${chosen} [data-retare~="${id}"]{display:revert}${chosen} .retare-native:not([data-retare~="${id}"]){display:none}`;
}
