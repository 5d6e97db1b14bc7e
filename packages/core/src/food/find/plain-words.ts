import type { Food } from '../food.js';
import { comesIn, hasNameWord, isFreshProduce, isOnlyTinned, isRaw } from './traits.js';

const list = (words: string): string[] => words.split(/\s+/).filter((word) => word !== '');

/** Words that say how a food looks or was handled, and never make another food of it. */
const always: ReadonlySet<string> = new Set(
  list(`
    a an the of in on some any very extra more other own our my your
    good great nice best lovely perfect excellent decent quality favorite favourite preferred authentic traditional classic basic simple
    regular ordinary normal standard usual typical plain pure real genuine proper natural organic local homegrown homemade
    small medium large big huge tiny little jumbo baby young long short plump thick thin
    freshly new firm ripe ripened overripe unripe raw uncooked seasonal italian english persian
    finely coarsely roughly thinly thickly lightly loosely firmly well
    chopped diced sliced minced crushed grated shredded crumbled cubed quartered halved julienned torn snipped smashed bruised shaved cut
    shelled hulled husked shucked peeled unpeeled pitted stoned cored deseeded seeded seedless stemmed trimmed skinned boned deboned deveined
    debearded gutted scaled scrubbed washed cleaned rinsed drained strained squeezed pressed sifted beaten softened melted thawed defrosted
    chilled refrigerated hot cold warm cool room temperature
    boneless skinless rindless lean center centre
    pasture raised grass fed sustainably line caught farmed farm farmhouse
    low sodium reduced unsalted unsweetened unbleached enriched spicy spice
    yukon gold russet waxy floury curly flat vine florets fillet fillets loin steaks pieces piece slices cubes chunks wedges halves cloves clove
    bulb bulbs
    heaping heaped bottled packed store bought pre made un unopened inch size sized style bulk brand`),
);

/** Whether a word that was left out may be left out before a food; `said` is every word of the phrase. */
type Fits = (food: Food, said: ReadonlySet<string>, unmeasured: boolean) => boolean;

const inTins: Fits = (food) => comesIn(food, 'can', 'tin', 'jar');
/** Sold by the sprig, the head or the bunch, and not by the piece: grape leaves are no grapes. */
const leafy: Fits = ({ pieces }) => {
  const has = (...units: string[]): boolean => pieces.some(({ unit }) => units.includes(unit));
  return has('sprig', 'head') || (has('bunch') && !has('count'));
};
const flesh: Fits = ({ coreClass }) => coreClass === null;
const cut: Fits = (_food, said) => said.has('in') || said.has('on') || said.has('less');
/** Pasta, rice, pulses and spices as they keep in the cupboard: nothing that is also sold fresh or in tins. */
const keepsDry: Fits = (food) =>
  hasNameWord(food, 'dried') ||
  ((food.role === 'bulk' || food.role === 'seasoning') &&
    food.keeps.where === 'cupboard' &&
    !food.pours &&
    !comesIn(food, 'can', 'tin') &&
    !food.pieces.some(({ unit }) => food.role === 'seasoning' || unit === 'count'));

/** What is toasted stays what it is, but for meat, which is cooked, and for a jar of mustard. */
const toasts: Fits = (food) =>
  !isRaw(food) && (food.role !== 'seasoning' || food.pieces.length > 0 || hasNameWord(food, 'seed', 'seeds'));

const grinding = ['ground', 'grated', 'cracked'];

/** Such words that hold for some foods only. */
const some: ReadonlyMap<string, Fits> = new Map(
  (
    [
      // `Fresh chopped tomatoes` are not those of the tin, and `fresh turmeric` is no powder, though `fresh ground pepper` is one.
      [
        'fresh',
        (food, said) =>
          food.role === 'bulk'
            ? !isOnlyTinned(food) && !hasNameWord(food, 'dried')
            : !hasNameWord(food, 'dried', 'ground', 'powder') || grinding.some((word) => said.has(word)),
      ],
      // `White whole wheat flour` is not `white wheat flour`.
      ['whole', (food) => food.role !== 'flour' && food.role !== 'liquid' && !hasNameWord(food, 'ground', 'powder')],
      ['dry dried', keepsDry],
      ['mini miniature', ({ role }) => role !== 'egg'],
      ['toasted roasted', toasts],
      ['leaf leaves', leafy],
      ['sprig sprigs stalk stalks head heads ear ears', flesh],
      ['bone skin', cut],
      // Garlic from the wild is another plant.
      ['wild', ({ role }) => role !== 'seasoning'],
      ['canned jarred', inTins],
      ['frozen', (food) => food.keeps.where === 'freezer' || isRaw(food)],
      // A cup of it cooked holds less than half as much, but nothing is weighed where nothing is measured.
      [
        'cooked precooked',
        (food, said, unmeasured) => unmeasured || said.has('un') || hasNameWord(food, 'cooked', 'canned'),
      ],
      ['mashed pureed reconstituted', (_food, _said, unmeasured) => unmeasured],
      ['coarse fine', ({ role }) => role === 'bulk' || role === 'flour'],
      ['crisp', ({ role }) => role !== 'seasoning'],
      ['free', (_food, said) => said.has('range')],
      ['range', (_food, said) => said.has('free')],
      ['day', (_food, said) => said.has('old')],
      ['old', (_food, said) => said.has('day')],
      // `Full-fat yogurt` is the usual one, `duck fat` is no duck.
      ['full', (_food, said) => said.has('fat')],
      ['fat', (_food, said) => said.has('full')],
      ['taco burrito fajita soft', (food) => hasNameWord(food, 'tortilla', 'tortillas')],
      ['no knead', (food) => hasNameWord(food, 'dough')],
      [
        'american british californian egyptian french greek mexican moroccan spanish turkish',
        (food) => isFreshProduce(food) || hasNameWord(food, 'tortilla'),
      ],
    ] as [string, Fits][]
  ).flatMap(([words, fits]) => list(words).map((word): [string, Fits] => [word, fits])),
);

/** Whether a word may change nothing about a food. */
export function isPlain(word: string): boolean {
  return always.has(word) || some.has(word) || isNumber(word);
}

/** `90% lean beef`, `80/20`: a share, or a size. */
const isNumber = (word: string): boolean => /^(?:\d\d%?|\d%)$/.test(word);

/** Whether a plain word says something of some foods, so that it is left out after those that say nothing; `fresh` says least. */
export function isTelling(word: string): boolean {
  return word !== 'fresh' && some.has(word);
}

/** Whether a plain word that was left out changes nothing about this food. */
export function changesNothing(word: string, food: Food, said: ReadonlySet<string>, unmeasured: boolean): boolean {
  // The share of fat makes another cream of it.
  if (isNumber(word)) return food.role !== 'liquid';
  return some.get(word)?.(food, said, unmeasured) ?? true;
}
