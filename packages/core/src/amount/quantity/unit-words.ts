import type { UnitId } from '../unit.js';

/** How a unit is spelt. All spellings are lower case but those under `exact`. */
export interface UnitSpelling {
  unit: UnitId;
  /** Full words for one: alone, without a number, they stand for 1 (`pinch of salt`). */
  one: readonly string[];
  /** Full words for several: alone they have no number (`sprigs of mint`). */
  many: readonly string[];
  /** Abbreviations: never alone, and a full stop behind belongs to them. */
  short: readonly string[];
  /** Abbreviations in which capitals matter (`T` and `t`), read only behind a number. */
  exact?: readonly string[];
}

/** Words for the units of every kitchen. Sizes are the kitchen's; words are the same everywhere. */
export const measures: readonly UnitSpelling[] = [
  { unit: 'g', one: ['gram', 'gramme'], many: ['grams', 'grammes'], short: ['g', 'gr', 'grs', 'gm', 'gms', 'gs'] },
  {
    unit: 'kg',
    one: ['kilogram', 'kilogramme', 'kilo'],
    many: ['kilograms', 'kilogrammes', 'kilos'],
    short: ['kg', 'kgs', 'kgr'],
  },
  { unit: 'mg', one: ['milligram', 'milligramme'], many: ['milligrams', 'milligrammes'], short: ['mg', 'mgs'] },
  { unit: 'oz', one: ['ounce'], many: ['ounces'], short: ['oz', 'ozs'] },
  { unit: 'lb', one: ['pound'], many: ['pounds'], short: ['lb', 'lbs'] },
  {
    unit: 'ml',
    one: ['millilitre', 'milliliter'],
    many: ['millilitres', 'milliliters'],
    short: ['ml', 'mls', 'cc'],
  },
  { unit: 'cl', one: ['centilitre', 'centiliter'], many: ['centilitres', 'centiliters'], short: ['cl', 'cls'] },
  { unit: 'dl', one: ['decilitre', 'deciliter'], many: ['decilitres', 'deciliters'], short: ['dl', 'dls'] },
  { unit: 'l', one: ['litre', 'liter'], many: ['litres', 'liters'], short: ['l', 'lt', 'ltr', 'ltrs', 'lts'] },
  {
    unit: 'tsp',
    one: ['teaspoon', 'teaspoonful'],
    many: ['teaspoons', 'teaspoonfuls'],
    short: ['tsp', 'tsps', 'teasp', 'tspn'],
    exact: ['t'],
  },
  {
    unit: 'tbsp',
    one: ['tablespoon', 'tablespoonful'],
    many: ['tablespoons', 'tablespoonfuls'],
    short: ['tbsp', 'tbsps', 'tbs', 'tblsp', 'tblsps', 'tbl', 'tbls', 'tb', 'tblspn', 'tbspn', 'tablesp'],
    exact: ['T'],
  },
  { unit: 'cup', one: ['cup', 'cupful'], many: ['cups', 'cupfuls'], short: [], exact: ['c', 'C'] },
  { unit: 'pint', one: ['pint'], many: ['pints'], short: ['pt', 'pts'] },
  { unit: 'quart', one: ['quart'], many: ['quarts'], short: ['qt', 'qts'] },
  { unit: 'gallon', one: ['gallon'], many: ['gallons'], short: ['gal', 'gals'] },
  { unit: 'cm', one: ['centimetre', 'centimeter'], many: ['centimetres', 'centimeters'], short: ['cm', 'cms'] },
  { unit: 'mm', one: ['millimetre', 'millimeter'], many: ['millimetres', 'millimeters'], short: ['mm'] },
  { unit: 'in', one: ['inch'], many: ['inches', 'inchs'], short: ['ins'] },
];

/** Words that count: shop containers, natural pieces, and gestures that have a number. */
export const counters: readonly UnitSpelling[] = [
  { unit: 'pinch', one: ['pinch'], many: ['pinches'], short: [] },
  { unit: 'dash', one: ['dash'], many: ['dashes'], short: [] },
  { unit: 'clove', one: ['clove'], many: ['cloves'], short: [] },
  { unit: 'slice', one: ['slice', 'rasher'], many: ['slices', 'rashers'], short: [] },
  { unit: 'bunch', one: ['bunch'], many: ['bunches'], short: [] },
  { unit: 'sprig', one: ['sprig', 'twig', 'branch'], many: ['sprigs', 'twigs', 'branches'], short: [] },
  { unit: 'head', one: ['head'], many: ['heads'], short: [] },
  { unit: 'stick', one: ['stick'], many: ['sticks'], short: [] },
  { unit: 'can', one: ['can'], many: ['cans'], short: [] },
  { unit: 'tin', one: ['tin'], many: ['tins'], short: [] },
  { unit: 'piece', one: ['piece'], many: ['pieces'], short: ['pc', 'pcs'] },
  { unit: 'handful', one: ['handful'], many: ['handfuls', 'handsful'], short: [] },
];

/** Container words, all of the unit `packet`, with the singular that a pack keeps. */
export const containers: Readonly<Record<string, string>> = {
  packet: 'packet',
  packets: 'packet',
  pack: 'pack',
  packs: 'pack',
  package: 'package',
  packages: 'package',
  pkg: 'package',
  pkgs: 'package',
  pkt: 'packet',
  pkts: 'packet',
  sachet: 'sachet',
  sachets: 'sachet',
  envelope: 'envelope',
  envelopes: 'envelope',
  env: 'envelope',
  envs: 'envelope',
  pouch: 'pouch',
  pouches: 'pouch',
  bag: 'bag',
  bags: 'bag',
  box: 'box',
  boxes: 'box',
  carton: 'carton',
  cartons: 'carton',
  container: 'container',
  containers: 'container',
  tub: 'tub',
  tubs: 'tub',
  tube: 'tube',
  tubes: 'tube',
  jar: 'jar',
  jars: 'jar',
  bottle: 'bottle',
  bottles: 'bottle',
  pot: 'pot',
  pots: 'pot',
  punnet: 'punnet',
  punnets: 'punnet',
  tray: 'tray',
  trays: 'tray',
  canister: 'canister',
  canisters: 'canister',
  jug: 'jug',
  jugs: 'jug',
  pottle: 'pot',
  pottles: 'pot',
};

/** Container words that stand for several. */
export const severalContainers: ReadonlySet<string> = new Set(
  Object.keys(containers).filter((word) => word.endsWith('s')),
);

/** Container words that are abbreviations. */
export const shortContainers: ReadonlySet<string> = new Set(['pkg', 'pkgs', 'pkt', 'pkts', 'env', 'envs']);

/** Measure words without a unit of their own: they count, and leave the food when they stand before it. */
export const looseMeasures: Readonly<Record<string, 'one' | 'many'>> = Object.fromEntries([
  ...[
    ['glass', 'glasses'],
    ['mug', 'mugs'],
    ['bowl', 'bowls'],
    ['shot', 'shots'],
    ['kettle', 'kettles'],
    ['spoon', 'spoons'],
    ['spoonful', 'spoonfuls'],
    ['dessertspoon', 'dessertspoons'],
    ['soupspoon', 'soupspoons'],
    ['ear', 'ears'],
    ['stalk', 'stalks'],
    ['rib', 'ribs'],
    ['leaf', 'leaves'],
    ['pod', 'pods'],
    ['strand', 'strands'],
    ['strip', 'strips'],
    ['block', 'blocks'],
    ['brick', 'bricks'],
    ['loaf', 'loaves'],
    ['ball', 'balls'],
    ['log', 'logs'],
    ['bar', 'bars'],
    ['cube', 'cubes'],
    ['square', 'squares'],
    ['sheet', 'sheets'],
    ['wedge', 'wedges'],
    ['wheel', 'wheels'],
    ['ring', 'rings'],
    ['drop', 'drops'],
    ['jigger', 'jiggers'],
    ['recipe', 'recipes'],
    ['batch', 'batches'],
    ['serving', 'servings'],
    ['stem', 'stems'],
    ['hunk', 'hunks'],
    ['chunk', 'chunks'],
    ['slab', 'slabs'],
    ['rack', 'racks'],
    ['scoop', 'scoops'],
    ['bulb', 'bulbs'],
    ['bundle', 'bundles'],
    ['portion', 'portions'],
  ].flatMap(([one = '', many = '']) => [
    [one, 'one'],
    [many, 'many'],
  ]),
  // `2 nos onion`, for numbers.
  ['nos', 'many'],
]);

/** Words that begin with a measure word and are foods: `2 rib eye steaks`, `1 leaf lettuce`. */
export const foodsNotMeasures: Readonly<Record<string, readonly string[]>> = {
  rib: ['eye', 'eyes', 'roast', 'steak', 'steaks', 'chop', 'chops', 'tips'],
  strip: ['steak', 'steaks', 'loin', 'loins'],
  leaf: ['lettuce', 'spinach', 'parsley', 'lard'],
  cube: ['steak', 'steaks'],
  drop: ['biscuits', 'biscuit', 'scones'],
  glass: ['noodles', 'noodle', 'marbles', 'marble', 'jar', 'jars', 'bowl'],
  sheet: ['pan', 'pans'],
  head: ['cheese'],
  spoon: ['bread'],
  tin: ['foil'],
  stick: ['blender'],
  can: ['opener'],
  clove: ['powder'],
  cup: ['cakes', 'cake', 'mushrooms'],
  pound: ['cake'],
  stem: ['ginger'],
  brick: ['cheese'],
};

/** Words that go on behind such a food, so that the first is a measure again: `1 cup cake flour`. */
export const foodsThatGoOn: Readonly<Record<string, readonly string[]>> = {
  cake: ['flour', 'flours', 'mix', 'crumbs', 'batter'],
};
