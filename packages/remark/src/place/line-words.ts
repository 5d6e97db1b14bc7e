import { type Edit, nameIn, soldIn, type Version, type VersionLine } from '@retare/core';
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
function noteWords(line: VersionLine, version: Version): string {
  const notes = line.notes.flatMap((note) => {
    if (note.kind === 'lighter-kosher')
      return ['flaked kosher salt is the lighter grain: use about half as much of any other'];
    return [];
  });
  const unsold = line.problems.some(({ problem }) => problem.rule === 'unbuyable' && problem.reason === 'not-sold');
  return [...notes, ...(unsold ? [standInWords(line, version)] : [])].join('; ');
}

function standInWords({ line }: VersionLine, { kitchen }: Version): string {
  const food = line.food;
  const standIn = food === null ? undefined : soldIn(food, kitchen.id)?.standIns[0];
  if (food === null || standIn === undefined) return `not sold in ${kitchen.name}`;
  const names = standIn.parts.map(({ food: id, share }) => {
    const name = id.replaceAll('-', ' ');
    return standIn.parts.length === 1 ? name : `${share.times(100).toDecimalPlaces(0)} % ${name}`;
  });
  return `not sold in ${kitchen.name}: use ${names.join(' and ')}`;
}

/** A food's name for a page of that kitchen. */
export function shownName(line: VersionLine, kitchen: string): string {
  const { food, reading } = line.line;
  return reading.food?.text ?? (food === null ? line.line.text : nameIn(food, kitchen).one);
}
