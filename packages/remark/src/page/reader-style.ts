import { readFileSync } from 'node:fs';

/**
 * The reader's stylesheet for the kitchens that a site's pages may show.
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
  return `${minimal}@layer retare{${unchosen}${kitchens.map(kitchenRules).join('')}}\n`;
}

const hide = '{display:none!important}';
const control = 'retare-kitchens:not([data-again])';

/** Where there is no control to choose with, only native texts show. */
const unchosen = `:root:not(:has(${control})) [data-retare]:not(.retare-native)${hide}`;

/**
 * With a kitchen chosen all texts hide that are not for it: on the whole page where its controls agree, and always in a post that has a
 * control of its own, so that a page of several posts makes sense where no script keeps them together. `:has` needs no script.
 */
function kitchenRules(id: string): string {
  const chosen = `${control} [value="${id}"]:checked`;
  const other = `${control} option:checked:not([value="${id}"])`;
  const texts = `[data-retare]:not([data-retare~="${id}"])`;
  return `:root:has(${chosen}):not(:has(${other})) ${texts},:has(>${chosen}) ${texts}${hide}`;
}
