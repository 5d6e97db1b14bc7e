import { type Edit, type LineNote, nameIn, type Version, type VersionLine } from '@retare/core';
import type { PhrasingContent } from 'mdast';
import type { RecipeReading } from '../read/reading.js';
import { inlineElement, words } from './element.js';
import { spliceWords } from './splice-words.js';

/** A line's words in a version, with its annotations followed and its note. */
export function lineWords(
  line: VersionLine,
  version: Version,
  reading: RecipeReading,
): { same: string; children: () => PhrasingContent[] } {
  const place = reading.lines.get(line.line.key);
  const edits = [...line.edits, ...mentionEdits(line, version, reading)];
  const note = noteWords(line, version);
  return {
    same: JSON.stringify([edits, note]),
    children: () => {
      const content = place === undefined ? [words(line.line.text)] : spliceWords(place.paragraph.children, edits);
      return note === ''
        ? content
        : [...content, words(' '), inlineElement('small', { className: ['retare-note'] }, [words(`(${note})`)])];
    },
  };
}

/** Annotations inside the line: lengths, temperatures. */
function mentionEdits({ line }: VersionLine, version: Version, reading: RecipeReading): Edit[] {
  const pieces = reading.lines.get(line.key)?.words.pieces ?? [];
  return version.steps.flatMap(({ mentions }) =>
    mentions.flatMap(({ mention, text, hold }): Edit[] => {
      const own = reading.mentions.get(mention.key)?.words.pieces ?? [];
      const inLine = pieces.filter((piece) => own.some(({ node }) => node === piece.node));
      const first = inLine[0];
      const last = inLine.at(-1);
      if (first === undefined || last === undefined || (text === mention.text && hold === '')) return [];
      return [{ start: first.start, end: last.end, text }];
    }),
  );
}

/** What a reader has to know about the line there and then. */
function noteWords(line: VersionLine, { kitchen }: Version): string {
  const unsold = line.problems.some(({ problem }) => problem.rule === 'unbuyable' && problem.reason === 'not-sold');
  return [...line.notes.flatMap(noteText), ...(unsold ? [`not sold in ${kitchen.name}`] : [])].join('; ');
}

function noteText(note: LineNote): string[] {
  switch (note.kind) {
    case 'lighter-kosher':
      return ['by the lighter grain of kosher salt'];
    case 'stand-in': {
      const adds = note.allergens.length === 0 ? '' : `, and adds ${note.allergens.join(' and ')}: an allergen`;
      return [`in place of ${note.food}, not sold in ${note.kitchen}${adds}`];
    }
    case 'as-written':
      return [];
  }
}

/** A food's name for a page of that kitchen. */
export function shownName(line: VersionLine, kitchen: string): string {
  const { food, reading } = line.line;
  return reading.food?.text ?? (food === null ? line.line.text : nameIn(food, kitchen).one);
}
