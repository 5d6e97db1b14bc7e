import {
  applyEdits,
  type LineNote,
  nameIn,
  translateName,
  type Version,
  type VersionFood,
  type VersionLine,
} from '@retare/core';
import type { PhrasingContent } from 'mdast';
import type { RecipeReading } from '../read/reading.js';
import { isAnnotation } from '../syntax/names.js';
import { annotationEdits } from './annotation-edits.js';
import { readAs, wordsInstead } from './annotation-readings.js';
import { inlineElement, words } from './element.js';
import { spliceWords } from './splice-words.js';

/** A line's words in a version, with its annotations followed and its note. */
export function lineWords(
  line: VersionLine,
  version: Version,
  reading: RecipeReading,
): { same: string; children: () => PhrasingContent[] } {
  const place = reading.lines.get(line.line.key);
  const edits = [...line.edits, ...annotationEdits(line, version, reading, (own) => readAs(own, version))];
  const note = noteWords(line, version);
  return {
    same: JSON.stringify([applyEdits(line.line.text, edits), note]),
    children: () => {
      const content = place === undefined ? [words(line.line.text)] : spliceWords(place.paragraph.children, edits);
      const plain = withoutAnnotations(content, reading.source);
      return note === ''
        ? plain
        : [...plain, words(' '), inlineElement('small', { className: ['retare-note'] }, [words(`(${note})`)])];
    },
  };
}

/** Annotations of ours give way to their words. */
export function withoutAnnotations(nodes: readonly PhrasingContent[], source: string): PhrasingContent[] {
  return nodes.flatMap((node): PhrasingContent[] => {
    if (node.type === 'textDirective' && isAnnotation(node.type, node.name))
      return withoutAnnotations(wordsInstead(node, source), source);
    if ('children' in node)
      node.children = withoutAnnotations(node.children as PhrasingContent[], source) as typeof node.children;
    return [node];
  });
}

/** What a reader has to know about the line there and then. */
function noteWords(line: VersionLine, { kitchen }: Version): string {
  const unsold = line.problems.some(({ problem }) => problem.rule === 'unbuyable' && problem.reason === 'not-sold');
  return [...line.notes.flatMap(noteText), ...(unsold ? [`not sold in ${kitchen.adjective} shops`] : [])].join('; ');
}

function noteText(note: LineNote): string[] {
  switch (note.kind) {
    case 'lighter-kosher':
      return ['by the lighter grain of kosher salt'];
    case 'stand-in': {
      const adds = note.allergens.length === 0 ? '' : `, and adds ${note.allergens.join(' and ')}: an allergen`;
      return [`in place of ${note.food}, not sold there${adds}`];
    }
    case 'as-written':
      return [];
  }
}

/** A line's food by the word that a cook of that kitchen reads for it. */
export function shownName({ line }: VersionLine, { food }: VersionFood, kitchen: string): string {
  const standsIn = food !== null && food !== line.food;
  if (standsIn) return nameIn(food, kitchen).many;
  const written = (line.name?.text ?? line.reading.food?.text ?? line.text).trim();
  return (food === null ? null : translateName(food, written, kitchen)) ?? written;
}
