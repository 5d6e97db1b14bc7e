import { type Infeasible, type Kitchen, nameIn, type Obstacle } from '@retare/core';
import type { DraftRefusal } from './draft-post.js';
import { percentWords } from './percent-words.js';

/** What stands in the way of any version, for its author. */
export function obstacleWords(obstacle: Obstacle, kitchen: Kitchen): string {
  if (obstacle.kind === 'no-amount') {
    const { line, pack, need } = obstacle;
    const food = line.food === null ? line.text : nameIn(line.food, kitchen.id).many;
    const grams = (value: number): string => `${Number(value.toPrecision(3))} g`;
    return pack === null
      ? `nothing that ${aOf(kitchen)} cook can buy or measure comes near to the ${food}`
      : `${kitchen.adjective} shops sell ${food} in packs of ${grams(pack)}, and the batch asks for ${grams(need)}`;
  }
  const { name, part, drift, limit } = obstacle;
  const [by, most] = percentWords(Math.abs(drift), limit);
  return `${ratioWords(name, part)} would drift by ${drift < 0 ? '−' : '+'}${by}; its limit is ${most}`;
}

/** The least that would have to give. */
export function changeWords({ name, part, limit }: NonNullable<Infeasible['leastChange']>): string {
  const most = `${(limit * 100).toFixed(1)} %`;
  return name.includes(' : ') ? `a limit of ${most} for ${ratioWords(name, part)}` : `letting ${name} drift by ${most}`;
}

function ratioWords(name: string, part: string | null): string {
  return `${name.replace(' : ', ' to ')}${part === null ? '' : ` (${part})`}`;
}

function aOf({ adjective }: Kitchen): string {
  return `${/^[AEIO]/.test(adjective) ? 'an' : 'a'} ${adjective}`;
}

/** Why a post is not re-authored. */
export function refusalWords(refusal: DraftRefusal, path: string, kitchen: Kitchen): string {
  switch (refusal.kind) {
    case 'preserve':
      return `${path} is a preserve: its sugar, acid and salt are what keeps it safe, so no version is drafted. Use a recipe tested in that kitchen, and follow your own food-safety authority.`;
    case 'ask-preserve':
      return `${path} ${refusal.ask}, and follow your own food-safety authority.`;
    case 'native-kitchen':
      return `${path} is written for the ${kitchen.adjective} kitchen already, so there is nothing to draft.`;
    case 'no-ingredients':
      return `${path} has no \`ingredients\` block, so there is nothing to draft.`;
    case 'unknown-anchor':
      return `${path} lists no \`${refusal.anchor}\` with an amount, so it cannot be the anchor. Name a food as one of its lines does.`;
  }
}
