import { element, escapeHtml } from './html.js';

/** Sources are few and used by thousands of values: each is written out once, and values point to it by number. */
export class SourceNotes {
  readonly #numbers = new Map<string, number>();

  /** The mark that stands behind a value. */
  mark(source: string): string {
    const number = this.#numbers.get(source) ?? this.#numbers.size + 1;
    this.#numbers.set(source, number);
    return element('sup', element('a', String(number), { href: `#s${number}`, 'aria-label': `source ${number}` }));
  }

  /** The list of them all. */
  list(): string {
    const items = [...this.#numbers].map(([source, number]) => element('li', escapeHtml(source), { id: `s${number}` }));
    return element('ol', items.join('\n'), { class: 'sources' });
  }
}
