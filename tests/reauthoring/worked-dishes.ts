import {
  applyEdits,
  defaultWeights,
  Exact,
  findFoodOfLine,
  isRefusal,
  type Kitchen,
  type Line,
  type RatioReport,
  type Reauthored,
  type Recipe,
  readLine,
  reauthor,
  type Setting,
  type VersionLine,
  writeStated,
} from '@retare/core';
import { builtInLarder } from '@retare/larder';

const { foods, kitchens } = builtInLarder();
const setting: Setting = { foods, kitchens, tolerance: new Exact('0.05') };

function kitchen(id: string): Kitchen {
  const found = kitchens.get(id);
  if (found === undefined) throw new RangeError(`There is no kitchen ${id}.`);
  return found;
}

/** A dish that the page works through. */
export interface Dish {
  title: string;
  /** What the page says before the numbers. */
  words: string;
  post: { kitchen: string; lines: readonly string[]; prose?: string };
  anchor?: string;
  to: readonly string[];
}

export const stew: Dish = {
  title: 'A stew on tins of beans, from a US kitchen to a UK one',
  words:
    'The author names butter beans as the anchor. A US can of them holds 15 oz, a UK tin 400 g; the line says drained, so drained weights are ' +
    'compared where both are known. The batch follows the beans, and everything that pours or is weighed follows the batch. Tins of ' +
    'tomatoes are opened whole too.',
  anchor: 'butter beans',
  to: ['uk'],
  post: {
    kitchen: 'us',
    lines: [
      '2 (15-oz) cans butter beans, drained',
      '1 (14.5-oz) can diced tomatoes',
      '2 tbsp olive oil',
      '1 onion, chopped',
      '2 cloves garlic',
      '1 cup chicken broth',
      '1 tsp table salt',
      '1 tsp paprika',
      '1 lb smoked sausage',
    ],
  },
};

export const loaf: Dish = {
  title: 'A loaf written in grams, for a US kitchen without a scale',
  words:
    'Nothing here is used whole but the yeast, and its sachet is the same in both kitchens, so the batch stays as it is. Flour, water and salt ' +
    'go into cups and spoons together: the water may drift by 6 % of the flour at most, yeast and salt by 10 %.',
  to: ['us'],
  post: {
    kitchen: 'eu',
    lines: ['500 g strong white bread flour', '340 ml water', '10 g fine salt', '7 g fast-action dried yeast'],
  },
};

export const sponge: Dish = {
  title: 'A four-egg sponge on 225 g of each, from a UK kitchen to a US and an Australian one',
  words:
    'Eggs cannot be divided, and those of the three countries weigh differently. The self-raising flour counts as flour, baking powder and ' +
    'salt. The cream is whipped and fills the cake, so it stands outside the ratios to flour.',
  to: ['us', 'au'],
  post: {
    kitchen: 'uk',
    lines: [
      '225 g unsalted butter, soft',
      '225 g caster sugar',
      '4 large eggs',
      '225 g self-raising flour',
      '300 ml double cream',
    ],
    prose:
      'Cream the butter and sugar, beat in the eggs and fold in the flour. Whip the cream and sandwich the cakes with it.',
  },
};

function recipeOf({ kitchen: id, lines, prose }: Dish['post']): Recipe {
  const block = { kitchen: id, id: null, cooked: null, from: null };
  const read = lines.map((text, at): Line => {
    const reading = readLine(text, { kitchen: kitchen(id).units });
    const named = findFoodOfLine(reading, foods, id);
    return { key: `l${at}`, text, reading, food: named?.food ?? null, name: named?.name ?? null };
  });
  return {
    kitchen: id,
    makes: null,
    anchor: null,
    preserve: null,
    parts: [{ native: { ...block, key: 'p', label: null, lines: read }, authored: [] }],
    steps: [{ native: { ...block, key: 'm', mentions: [], prose: prose ?? '' }, authored: [] }],
  };
}

/** A version's line as it is read. */
export function textOf({ line, edits }: VersionLine): string {
  return applyEdits(line.text, edits);
}

/** A dish re-authored for a kitchen. */
export function worked({ post, anchor }: Dish, to: string, within: Setting = setting): Reauthored {
  const result = reauthor(recipeOf(post), to, within, anchor === undefined ? {} : { anchor });
  if (isRefusal(result)) throw new Error(result.kind);
  return result;
}

/** The setting with UK eggs weighed by the least of their class, as US eggs are, instead of by its middle. */
export function withLightEggs(): Setting {
  const uk = kitchen('uk');
  const sizes = uk.eggs.sizes.map((size) => {
    const leastGrams = leastOfClass[size.name];
    return leastGrams === undefined
      ? size
      : { ...size, typicalGrams: new Exact(leastGrams), edibleGrams: new Exact(leastGrams).times('0.88') };
  });
  const light: Kitchen = { ...uk, eggs: { ...uk.eggs, sizes } };
  return { ...setting, kitchens: new Map([...setting.kitchens, ['uk', light]]) };
}

/** Least grams in the shell of the UK classes: Regulation 589/2008, as read in pages that quote it. */
const leastOfClass: Readonly<Record<string, string>> = { medium: '53', large: '63' };

/** The page with the three dishes, every number computed. */
export function workedPage(): string {
  return [
    '# Three dishes, worked through',
    '',
    'Written by `node tests/reauthoring/worked-write.ts`; a test compares it with what the code computes. Percentages after an amount are its',
    'drift: how far it is from batch factor × native amount. Costs are those of the function that re-authoring minimises; only their',
    'differences mean anything.',
    '',
    ...[stew, loaf, sponge].flatMap(section),
    ...aboutEggs(),
  ].join('\n');
}

function section(dish: Dish): string[] {
  const lines = dish.to.flatMap((to) => version(dish, to));
  return [`## ${dish.title}`, '', wrapped(dish.words), '', ...lines];
}

function version(dish: Dish, to: string): string[] {
  const result = worked(dish, to);
  const batch = result.version.batchFactor;
  const rows = result.version.parts.flatMap((part) => part.lines.map((line) => row(line, batch, kitchen(to))));
  return [
    `### ${kitchen(to).name}: batch factor ${batch.toFixed(3)}, ${result.anchor === null ? 'no anchor' : `anchor ${result.anchor}`}`,
    '',
    '| native | weighs | × batch | becomes | drift | to buy | left |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
    '',
    '| guarded ratio | native | version | drift | limit |',
    '| --- | --- | --- | --- | --- |',
    ...result.ratios.map(ratioRow),
    '',
    wrapped(runnerUp(result)),
    '',
  ];
}

function row(line: VersionLine, batch: Exact, reader: Kitchen): string {
  const { native, drift, bought, food } = line;
  const weight = native.grams === null ? '' : `${native.grams.toFixed(1)} g`;
  const exact = native.grams === null ? '' : `${native.grams.times(batch).toFixed(1)} g`;
  const packs = (bought?.packs ?? []).map(({ count, pack }) =>
    writeStated(
      { statements: [[{ low: new Exact(count), high: null, unit: 'count' }]], pack, eggSize: null, approx: false },
      reader,
    ),
  );
  const loose = bought?.looseGrams == null ? [] : [`${bought.looseGrams.toFixed(0)} g loose`];
  const left =
    bought === null || bought.leftoverGrams.lessThan(1) ? '' : `${bought.leftoverGrams.toFixed(0)} g${keeps(food)}`;
  const cells = [
    line.line.text,
    weight,
    exact,
    textOf(line),
    drift === null ? '' : signed(drift.toNumber()),
    [...packs, ...loose].join(', '),
    left,
  ];
  return `| ${cells.join(' | ')} |`;
}

function keeps(food: VersionLine['food']): string {
  if (food === null || food.keeps.where === 'cupboard' || food.keeps.days === null) return '';
  return `, ${food.keeps.days} days${food.keeps.freezes ? ' or frozen' : ''}`;
}

function ratioRow({ name, native, version, limit }: RatioReport): string {
  const cells = [
    name,
    native.toFixed(4),
    version.toFixed(4),
    signed(version / native - 1),
    `${(100 * limit).toFixed(1)} %`,
  ];
  return `| ${cells.join(' | ')} |`;
}

function runnerUp({ cost, runnerUp: second }: Reauthored): string {
  const own = `It costs ${cost.toFixed(5)}.`;
  if (second === null) return `${own} There is no other batch to weigh it against.`;
  const anchor = second.anchor === null ? 'the native size' : `${second.anchor} as anchor`;
  return `${own} The runner-up, ${anchor} at batch factor ${second.batchFactor.toFixed(3)}, costs ${second.cost.toFixed(5)}.`;
}

/** Why the sponge is not made an eighth larger. */
function aboutEggs(): string[] {
  const [us, light] = [worked(sponge, 'us'), worked(sponge, 'us', withLightEggs())];
  const grams = (of: Kitchen, name: string): string =>
    of.eggs.sizes.find((size) => size.name === name)?.edibleGrams.toFixed(2) ?? '';
  const least = leastAtAnEighth();
  const words =
    `Five large US eggs hold 5 × ${grams(kitchen('us'), 'large')} g, four large UK ones 4 × ${grams(kitchen('uk'), 'large')} g without the shell: ` +
    `the UK class is a band per egg, and its middle counts, while the US class is the least of a carton. So five eggs are a batch of ${us.version.batchFactor.toFixed(3)}. ` +
    `Made ${least.batch.toFixed(3)} of the native size on the same five eggs, the egg alone would be ${signed(least.drift)} off; with the size of the batch that costs ${least.cost.toFixed(5)} before any other line, against ${us.cost.toFixed(5)} in all. ` +
    `A batch of ${least.batch.toFixed(3)} is what five eggs give if the UK egg too weighs the least of its class, 63 g in the shell, which is not how this larder weighs it; ` +
    `even then the choice is ${light.version.batchFactor.toFixed(3)} at ${light.cost.toFixed(5)}, and the runner-up ${light.runnerUp?.batchFactor.toFixed(3) ?? 'none'} at ${light.runnerUp?.cost.toFixed(5) ?? ''}.`;
  return ['## Why not a batch of 1.13 for the sponge', '', wrapped(words), ''];
}

/** What five US eggs cost at the least in a batch of 5 × US class minimum over 4 × UK class minimum. */
export function leastAtAnEighth(): { batch: number; drift: number; cost: number } {
  const large = (id: string) => kitchen(id).eggs.sizes.find(({ name }) => name === 'large');
  const [us, uk] = [large('us'), large('uk')];
  if (us === undefined || uk === undefined) throw new RangeError('There are no large eggs.');
  const batch = us.typicalGrams
    .times(5)
    .dividedBy(new Exact(leastOfClass.large ?? 0).times(4))
    .toNumber();
  const share = us.edibleGrams.times(5).dividedBy(uk.edibleGrams.times(4)).dividedBy(batch).toNumber();
  const { guarded, batch: size } = defaultWeights;
  return { batch, drift: share - 1, cost: guarded * Math.log(share) ** 2 + size * Math.log(batch) ** 2 };
}

function signed(fraction: number): string {
  const percent = (100 * fraction).toFixed(1);
  return `${Number(percent) > 0 ? '+' : ''}${Number(percent) === 0 ? '0.0' : percent} %`.replace('-', '−');
}

/** Lines of at most 130 characters. */
function wrapped(words: string): string {
  const lines: string[] = [''];
  for (const word of words.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last !== '' && last.length + word.length >= 130) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.join('\n');
}
