import type { FoundMention } from '@retare/core';
import type { MentionLabel } from './corpus.ts';

/** A value of at most four places, and what it is. Where no letter was written, the unit is the kitchen's and is not compared. */
export function mentionText(mention: Pick<FoundMention, 'kind' | 'impliedUnit' | 'low' | 'high' | 'unit'>): string {
  const { kind, low, high, unit, impliedUnit } = mention;
  const upper = high === null ? null : high.toDecimalPlaces(4).toFixed();
  return JSON.stringify([kind, low.toDecimalPlaces(4).toFixed(), upper, impliedUnit ? 'implied' : unit]);
}

/** The same of a label. */
export function labelText({ kind, low, high, unit, impliedUnit }: MentionLabel): string {
  return JSON.stringify([kind, low, high, impliedUnit ? 'implied' : unit]);
}

/** Labels and readings of one line that have no partner. */
export interface MentionScore {
  right: number;
  missed: string[];
  invented: string[];
}

/** Compares what was read in a line with its labels. */
export function scoreMentions(read: readonly FoundMention[], labels: readonly MentionLabel[]): MentionScore {
  const left = read.map(mentionText);
  const missed: string[] = [];
  for (const label of labels.map(labelText)) {
    const at = left.indexOf(label);
    if (at < 0) missed.push(label);
    else left.splice(at, 1);
  }
  return { right: labels.length - missed.length, missed, invented: left };
}
