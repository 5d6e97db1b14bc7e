import { celsiusOf, type Exact, type Kitchen, millilitresIn, oneOf, type SafeTemperature } from '@retare/core';
import type { Fault } from '../read/problem.js';

/**
 * What no schema sees in one kitchen: words that name a tool or size it has not, and a safe temperature below the base's.
 *
 * @param base The kitchen that was extended or overridden.
 * @returns Faults with paths inside the kitchen.
 */
export function checkKitchen(kitchen: Kitchen, base?: Kitchen): Fault[] {
  return [
    ...checkEggs(kitchen),
    ...checkWays(kitchen),
    ...checkWritten(kitchen),
    ...checkGas(kitchen),
    ...checkSafe(kitchen, base),
  ];
}

function checkEggs({ eggs }: Kitchen): Fault[] {
  const sizes = eggs.sizes.map(({ name }) => name);
  if (sizes.includes(eggs.usual)) return [];
  return [
    {
      path: ['eggs', 'usual'],
      message: `There is no egg size \`${eggs.usual}\` here. Use ${oneOf(sizes)}`,
      allowed: sizes,
    },
  ];
}

function checkWays({ measures, cups, jug, scale }: Kitchen): Fault[] {
  const tools = { spoon: true, cup: cups !== null, jug: jug !== null, scale: scale !== null };
  return (['pours', 'dry'] as const).flatMap((kind) =>
    [...measures[kind].entries()]
      .filter(([, way]) => !tools[way])
      .map(([index, way]) => ({
        path: ['measures', kind, index],
        message: `\`${kind}\` names a ${way}, and this kitchen has none. Leave it out, or describe the ${way}`,
      })),
  );
}

function checkWritten({ writes, units }: Kitchen): Fault[] {
  return [...writes.volume.entries()]
    .filter(([, unit]) => millilitresIn(unit, units) === null)
    .map(([index, unit]) => ({
      path: ['writes', 'volume', index],
      message: `\`volume\` names \`${unit}\`, whose size is not in \`units\`. Give its millilitres there`,
    }));
}

function checkGas({ oven }: Kitchen): Fault[] {
  if (oven.gas.length > 0 || !oven.states.includes('gas')) return [];
  return [
    {
      path: ['oven', 'states'],
      message: '`states` names gas, and this kitchen has no gas marks. Leave it out, or give them',
    },
  ];
}

/** Data may be stricter than an authority, never laxer: whoever cooks by it trusts that figure. */
function checkSafe(kitchen: Kitchen, base: Kitchen | undefined): Fault[] {
  return (base?.safe ?? []).flatMap((least) => {
    const now = kitchen.safe.find((safe) => safe.class === least.class);
    if (now === undefined || celsiusIn(now).gte(celsiusIn(least))) return [];
    const floor = `${least.temperature} °${least.unit}`;
    return [
      {
        path: ['safe', least.class, 'temperature'],
        message: `\`temperature\` takes no less than the ${floor} that ${least.authority} gives for ${least.name}, not \`${now.temperature} °${now.unit}\`. Write \`${floor}\` or more; readers should follow their own food-safety authority`,
      },
    ];
  });
}

const celsiusIn = ({ temperature, unit }: SafeTemperature): Exact => celsiusOf(temperature, unit);
