import type { Kitchen } from '@retare/core';
import type { RootContent } from 'mdast';
import { pageWords } from '../page/words.js';
import { blockElement, inlineElement, words, wordsElement } from './element.js';

/**
 * The one control of a page. It works by style alone; `retare-kitchens` is what the script hangs on.
 *
 * @param again A further control of the same page, of use only where a script keeps them together.
 */
export function chooser(kitchens: readonly Kitchen[], native: string, again: boolean): RootContent {
  const options = kitchens.map((kitchen) =>
    inlineElement(
      'option',
      {
        value: kitchen.id,
        dataRegions: kitchen.regions.length === 0 ? undefined : kitchen.regions.join(' '),
        selected: kitchen.id === native ? true : undefined,
      },
      [words(kitchen.name)],
    ),
  );
  const select = inlineElement('select', { autoComplete: 'off' }, options);
  const label = wordsElement('label', { className: ['retare-choice'] }, [
    inlineElement('span', {}, [words(pageWords.chooser)]),
    words(' '),
    select,
  ]);
  return blockElement('retare-kitchens', { dataAgain: again ? '' : undefined }, [label]);
}
