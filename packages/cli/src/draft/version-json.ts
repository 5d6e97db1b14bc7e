import {
  type BeyondDial,
  type Change,
  type Kitchen,
  nameIn,
  type Obstacle,
  type Reauthored,
  type Version,
  type VersionMention,
} from '@retare/core';
import type { RecipeReading } from 'remark-retare';
import { type Decimal, decimal } from '../decimal.js';
import type { DraftFinding } from './findings-in.js';
import { type JsonLine, lineJson } from './line-json.js';
import { foodWord, lineNumber, nativeWords } from './line-words.js';
import { changeWords, leastChangeWords, obstacleWords } from './obstacle-words.js';

/** A version with all its reasons. */
export interface JsonVersion {
  kitchen: string;
  standing: Version['standing'];
  anchor: string | null;
  batchFactor: Decimal;
  makes: string | null;
  lines: JsonLine[];
  ratios: { name: string; part: string | null; native: Decimal; version: Decimal; limit: Decimal }[];
  pans: { native: string; version: string; count: Decimal; depthDrift: Decimal; caution: boolean }[];
  /** `beyondDial` where the kitchen's ovens cannot be set so: the end of the dial and its last mark. */
  ovens: { native: string; version: string; beyondDial: { end: BeyondDial['end']; mark: string } | null }[];
  cores: { native: string; version: string; of: string | null; hold: string | null }[];
  /** What is minimised; null where a line has no amount at all. */
  cost: Decimal | null;
  runnerUp: { batchFactor: Decimal; anchor: string | null; cost: Decimal } | null;
  /** Null for a version that can be published. */
  infeasible: {
    /** What stands in the way; `finding`: what the check would say of the drafted blocks, by the name of its rule. */
    because: {
      kind: Obstacle['kind'] | 'finding';
      line: number | null;
      name: string;
      part: string | null;
      text: string;
    }[];
    /** The least that an author could change; null where nothing that was tried helps. */
    leastChange: { text: string; changes: JsonChange[] } | null;
  } | null;
}

/** One change of an author's. */
export interface JsonChange {
  kind: Change['kind'];
  /** Line of the native line in the post; null for a change of no line. */
  line: number | null;
  /** The line's word for its food, or the ratio whose limit is widened. */
  name: string | null;
  /** What is changed, and to what: a native amount, a limit, an anchor, a food, the size of a pack. */
  from: string | null;
  to: string | null;
  text: string;
}

/**
 * A version and its reasons as data.
 *
 * @param errors What the check finds in its blocks.
 */
export function versionJson(result: Reauthored, reading: RecipeReading, errors: readonly DraftFinding[]): JsonVersion {
  const { version, runnerUp } = result;
  const mentions = version.steps.flatMap((steps) => steps.mentions);
  return {
    kitchen: version.kitchen.id,
    standing: version.standing,
    anchor: result.anchor,
    batchFactor: decimal(version.batchFactor),
    makes: result.makes,
    lines: version.parts.flatMap(({ part, lines }) =>
      lines.flatMap((line) => lineJson(line, part.native.label, version, reading)),
    ),
    ratios: result.ratios.map(({ name, part, native, version: here, limit }) => ({
      name,
      part,
      native: decimal(native),
      version: decimal(here),
      limit: decimal(limit),
    })),
    pans: result.pans.map(({ native, version: here, count, depthDrift, caution }) => ({
      native,
      version: here,
      count: decimal(count),
      depthDrift: decimal(depthDrift),
      caution,
    })),
    ovens: mentions.flatMap(ovenJson),
    cores: mentions.flatMap(coreJson),
    cost: decimal(Number.isFinite(result.cost) ? result.cost : null),
    runnerUp:
      runnerUp === null
        ? null
        : { batchFactor: decimal(runnerUp.batchFactor), anchor: runnerUp.anchor, cost: decimal(runnerUp.cost) },
    infeasible: infeasibleJson(result, reading) ?? unpublishable(errors),
  };
}

function ovenJson({ mention, text, problems }: VersionMention): JsonVersion['ovens'] {
  if (mention.kind !== 'oven') return [];
  const [beyond] = problems.flatMap(({ problem }) => (problem.rule === 'oven-beyond-dial' ? [problem.beyond] : []));
  const beyondDial = beyond === undefined ? null : { end: beyond.end, mark: `${beyond.mark}°${beyond.unit}` };
  return [{ native: mention.text, version: text, beyondDial }];
}

function coreJson({ mention, text, hold }: VersionMention): JsonVersion['cores'] {
  if (mention.kind !== 'core') return [];
  return [{ native: mention.text, version: text, of: mention.of, hold: hold === '' ? null : hold }];
}

function infeasibleJson({ infeasible, version }: Reauthored, reading: RecipeReading): JsonVersion['infeasible'] {
  if (infeasible === null) return null;
  const { because, leastChange } = infeasible;
  const { kitchen } = version;
  return {
    because: because.map((obstacle) => ({
      kind: obstacle.kind,
      line: 'line' in obstacle ? lineNumber(obstacle.line, reading) : null,
      name: 'line' in obstacle ? foodWord(obstacle.line) : obstacle.name,
      part: 'part' in obstacle ? obstacle.part : null,
      text: obstacleWords(obstacle, kitchen),
    })),
    leastChange:
      leastChange.length === 0
        ? null
        : {
            text: leastChangeWords(infeasible, kitchen),
            changes: leastChange.map((change) => changeJson(change, kitchen, reading)),
          },
  };
}

/** A version that the check would refuse is none either: nobody has to read what is said beside the JSON to know. */
function unpublishable(errors: readonly DraftFinding[]): JsonVersion['infeasible'] {
  if (errors.length === 0) return null;
  const because = errors.map(({ rule, message }) => ({
    kind: 'finding' as const,
    line: null,
    name: rule,
    part: null,
    text: message,
  }));
  return { because, leastChange: null };
}

function changeJson(change: Change, kitchen: Kitchen, reading: RecipeReading): JsonChange {
  const [from, to] = fromTo(change, kitchen);
  const line = 'line' in change ? change.line : null;
  return {
    kind: change.kind,
    line: line === null ? null : lineNumber(line, reading),
    name: line !== null ? foodWord(line) : change.kind === 'limit' ? change.name : null,
    from,
    to,
    text: changeWords(change, kitchen),
  };
}

function fromTo(change: Change, { id }: Kitchen): [from: string | null, to: string | null] {
  switch (change.kind) {
    case 'native-amount':
      return [nativeWords(change), change.text];
    case 'limit':
      return [decimal(change.from), decimal(change.limit)];
    case 'anchor':
      return [null, change.anchor];
    case 'food':
      return [foodWord(change.line), nameIn(change.instead, id).many];
    case 'pack-size':
      return [null, `${change.size} ${change.unit}`];
    default:
      return [null, null];
  }
}
