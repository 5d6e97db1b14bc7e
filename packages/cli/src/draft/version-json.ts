import type { Reauthored, Version, VersionMention } from '@retare/core';
import type { RecipeReading } from 'remark-retare';
import { decimal } from './decimal.js';
import { type Decimal, type JsonLine, lineJson } from './line-json.js';
import { changeWords, obstacleWords } from './obstacle-words.js';

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
  ovens: { native: string; version: string }[];
  cores: { native: string; version: string; of: string | null; hold: string | null }[];
  /** What is minimised; null where a line has no amount at all. */
  cost: Decimal | null;
  runnerUp: { batchFactor: Decimal; anchor: string | null; cost: Decimal } | null;
  infeasible: {
    because: { kind: 'no-amount' | 'ratio'; text: string }[];
    leastChange: { name: string; part: string | null; limit: Decimal; text: string } | null;
  } | null;
}

/** A version and its reasons as data. */
export function versionJson(result: Reauthored, reading: RecipeReading): JsonVersion {
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
    ovens: mentions.flatMap(({ mention, text }) =>
      mention.kind === 'oven' ? [{ native: mention.text, version: text }] : [],
    ),
    cores: mentions.flatMap(coreJson),
    cost: decimal(Number.isFinite(result.cost) ? result.cost : null),
    runnerUp:
      runnerUp === null
        ? null
        : { batchFactor: decimal(runnerUp.batchFactor), anchor: runnerUp.anchor, cost: decimal(runnerUp.cost) },
    infeasible: infeasibleJson(result),
  };
}

function coreJson({ mention, text, hold }: VersionMention): JsonVersion['cores'] {
  if (mention.kind !== 'core') return [];
  return [{ native: mention.text, version: text, of: mention.of, hold: hold === '' ? null : hold }];
}

function infeasibleJson({ infeasible, version }: Reauthored): JsonVersion['infeasible'] {
  if (infeasible === null) return null;
  const { because, leastChange } = infeasible;
  return {
    because: because.map((obstacle) => ({ kind: obstacle.kind, text: obstacleWords(obstacle, version.kitchen) })),
    leastChange:
      leastChange === null
        ? null
        : { ...leastChange, limit: decimal(leastChange.limit), text: changeWords(leastChange) },
  };
}
