import { packWords } from '@retare/check';
import {
  type Change,
  type Food,
  type Infeasible,
  isHalved,
  type Kitchen,
  type Line,
  listed,
  nameIn,
  type Obstacle,
  type Pack,
  percentWords,
  soldIn,
  withArticle,
  writeLabel,
} from '@retare/core';
import type { DraftRefusal } from './draft-post.js';
import { nativeWords } from './line-words.js';

/** What stands in the way of any version, for its author. */
export function obstacleWords(obstacle: Obstacle, kitchen: Kitchen): string {
  switch (obstacle.kind) {
    case 'not-sold': {
      const { line, because, isAnchor } = obstacle;
      const unknown =
        because === 'no-stand-in'
          ? 'the larder knows nothing that takes its place'
          : 'what takes its place goes by weight, which the larder does not know of this line';
      return `${kitchen.adjective} shops do not sell ${wordFor(line)}${isAnchor ? ', the anchor' : ''}, and ${unknown}`;
    }
    case 'no-weight': {
      const { line, food, isAnchor } = obstacle;
      const packs = packWords(soldIn(food, kitchen.id)?.packs ?? []);
      return `${kitchen.adjective} shops sell ${wordFor(line)}${isAnchor ? ', the anchor,' : ''} in ${packs} that a cook uses whole, and what \`${nativeWords({ line }) ?? ''}\` weighs the larder does not know`;
    }
    case 'no-amount':
      return noAmountWords(obstacle, kitchen);
    case 'ratio': {
      const { name, part, drift, limit, whole } = obstacle;
      const [by, most] = percentWords(Math.abs(drift), limit);
      const packs = whole.map((food) => wholeOnly(food, kitchen));
      const only = packs.length === 0 ? '' : `, and there is ${listed(packs, 'and')} only`;
      return `${ratioWords(name, part)} would drift by ${drift < 0 ? '−' : '+'}${by}; its limit is ${most}${only}`;
    }
  }
}

function noAmountWords(
  { line, food, isAnchor, pack, need, base, batchFactor }: Extract<Obstacle, { kind: 'no-amount' }>,
  kitchen: Kitchen,
): string {
  const standsIn = food !== null && food !== line.food ? ` in place of ${wordFor(line)}` : '';
  const name = `${food === null ? wordFor(line) : nameIn(food, kitchen.id).many}${standsIn}`;
  const anchor = isAnchor ? ', the anchor,' : '';
  const size = (value: number): string => `${Number(value.toPrecision(3))}${base === 'count' ? '' : ` ${base}`}`;
  const batch =
    batchFactor === 1 ? 'the batch' : `a batch of ${Number(batchFactor.toFixed(3))}, as the anchor sets it,`;
  if (isCountedOut(food, kitchen) && pack !== null)
    return `no number of ${name}${anchor} that ${withArticle(kitchen)} cook can buy comes nearer than ${size(pack)}, and ${batch} asks for ${size(need)}`;
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (sold !== null && sold.packs.length > 0) {
    const packs = soldAs(sold.packs, pack === null ? '' : size(pack));
    return `${kitchen.adjective} shops sell ${name}${anchor} in ${packs}, and ${batch} asks for ${size(need)}`;
  }
  return pack === null
    ? `nothing that ${withArticle(kitchen)} cook can buy or measure comes near to the ${name}${anchor.slice(0, -1)}`
    : `the nearest that ${withArticle(kitchen)} cook measures of ${name}${anchor} is ${size(pack)}, and ${batch} asks for ${size(need)}`;
}

/** `160 ml and 400 ml tins`, and what the nearest number of them comes to where no label says so. */
function soldAs(packs: readonly Pack[], nearest: string): string {
  const isOnLabel = packs.some((pack) => nearest === writeLabel(pack));
  return `${packWords(packs)}${nearest === '' || isOnLabel ? '' : `, of which ${nearest} comes nearest`}`;
}

/** `chickpeas in whole 400 g tins only` */
function wholeOnly(food: Food, kitchen: Kitchen): string {
  const packs = soldIn(food, kitchen.id)?.packs ?? [];
  const whole = packs.length > 0 && packs.every((pack) => isHalved(food, pack)) ? 'whole or half' : 'whole';
  return `${nameIn(food, kitchen.id).many} in ${whole} ${packs.length === 0 ? 'pieces' : packWords(packs)}`;
}

/** Whether a cook counts out a food: eggs, stock cubes from a box of eight. */
function isCountedOut(food: Food | null, kitchen: Kitchen): boolean {
  const sold = food === null ? null : soldIn(food, kitchen.id);
  return food?.role === 'egg' || (sold?.singly === true && sold.packs.every(({ unit }) => unit === 'count'));
}

/** The least that an author could change, in a sentence. */
export function leastChangeWords({ leastChange }: Infeasible, kitchen: Kitchen): string {
  if (leastChange.length === 0)
    return 'No single change that was tried would help: change several native amounts, or write this version by hand.';
  const words = leastChange.map((change) => changeWords(change, kitchen));
  return `The least change that would help: ${words.join('; and ')}.`;
}

/** One change, as what an author does. */
export function changeWords(change: Change, kitchen: Kitchen): string {
  switch (change.kind) {
    case 'native-amount': {
      const { line, text } = change;
      return `write \`${text}\` for \`${nativeWords({ line }) ?? ''}\` of ${wordFor(line)} in the native lines`;
    }
    case 'anchor': {
      const factor = Number(change.batchFactor.toFixed(3));
      return change.anchor === null
        ? `name no anchor (batch factor ${factor})`
        : `name \`${change.anchor}\` as the anchor (batch factor ${factor})`;
    }
    case 'limit': {
      const { key, name, part, from, limit } = change;
      const [was, is] = percentWords(from, limit);
      return `let ${ratioWords(name, part)} drift by up to ${is} instead of ${was} (\`reauthoring: { limits: { ${settingName(key)}: ${limit} } }\` in retare.yaml)`;
    }
    case 'half-pack':
      return `let half a pack of ${nameIn(change.food, kitchen.id).many} be used (\`whole: half\` for its packs in the site's larder file)`;
    case 'pack-size': {
      const { food, size, unit } = change;
      return `if there are packs of about ${size} ${unit} of ${nameIn(food, kitchen.id).many} in ${kitchen.adjective} shops, add one to the site's larder file`;
    }
    case 'food': {
      const { allergens } = change;
      const adds = allergens.length === 0 ? '' : ` (it adds ${allergens.join(' and ')}: an allergen)`;
      return `name ${nameIn(change.instead, kitchen.id).many} instead of ${wordFor(change.line)}, which ${kitchen.adjective} shops sell${adds}, or give ${wordFor(change.line)} a stand-in in the site's larder file`;
    }
    case 'weight':
      return `give the weight of ${wordFor(change.line)} in its native line, as in \`${nativeWords(change) ?? ''} (${change.grams} g)\``;
    case 'own-version':
      return `write the line of ${wordFor(change.line)} by hand, in ${withArticle(kitchen)} version of your own`;
  }
}

/** A setting's name as `retare.yaml` has it: `baking-small`. */
function settingName(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function wordFor({ name, reading, text }: Line): string {
  return name?.text.trim() ?? reading.food?.text ?? text;
}

function ratioWords(name: string, part: string | null): string {
  return `${name.replace(' : ', ' to ')}${part === null ? '' : ` (${part})`}`;
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
