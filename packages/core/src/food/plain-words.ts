import type { Food } from './food.js';
import { hasNameWord, isFreshProduce, isRaw, soldIn } from './traits.js';

const list = (words: string): string[] => words.split(/\s+/).filter((word) => word !== '');

/** Words that say how a food looks or was handled, and never make another food of it. */
const always: ReadonlySet<string> = new Set(
  list(`freshly large small medium big extra jumbo baby young ripe raw good quality best organic plain regular ordinary
  boneless skinless in on lean hulled shelled peeled pitted trimmed chopped diced sliced minced crushed grated
  shredded thick thin thinly finely coarsely roughly hot cold warm cool room temperature softened melted unsweetened
  yukon gold russet waxy floury english persian curly flat florets fillet fillets loin steaks pieces
  piece cubes chunks wedges halves cloves clove bulb bulbs of the a an some very new crisp
  firm uncooked free range pasture raised sustainably low sodium unsalted reduced drained rinsed spice enriched sifted unbleached strained
  spicy long short homemade favourite favorite bottled packed heaping heaped seasonal beaten washed cleaned deveined unpeeled stemmed
  quartered halved julienned cored deseeded seeded un pre store bought authentic italian smashed bruised scrubbed squeezed torn snipped
  style bulk`),
);

/** Whether a word that was left out may be left out before a food; `said` is every word of the phrase. */
type Fits = (food: Food, said: ReadonlySet<string>, unmeasured: boolean) => boolean;

const inTins: Fits = (food) => soldIn(food, 'can', 'tin', 'jar');
const leafy: Fits = ({ pieces }) =>
  pieces.some(({ unit }) => unit === 'sprig' || unit === 'bunch' || unit === 'head' || unit === 'handful');
const flesh: Fits = ({ coreClass }) => coreClass === null;
const cut: Fits = (food, said) => isRaw(food) && (said.has('in') || said.has('on') || said.has('less'));

const grinding = ['ground', 'grated', 'cracked'];

/** Such words that hold for some foods only. */
const some: ReadonlyMap<string, Fits> = new Map(
  (
    [
      // `Fresh chopped tomatoes` are not those of the tin, and `fresh turmeric` is no powder, though `fresh ground pepper` is one.
      [
        'fresh',
        (food, said) =>
          (!hasNameWord(food, 'dried', 'ground', 'powder') || grinding.some((word) => said.has(word))) &&
          (food.role !== 'bulk' || !soldIn(food, 'can', 'tin') || isFreshProduce(food)),
      ],
      ['whole', (food) => !hasNameWord(food, 'ground', 'powder')],
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
      // `Full-fat yogurt` is the usual one, `duck fat` is no duck.
      ['full', (_food, said) => said.has('fat')],
      ['fat', (_food, said) => said.has('full')],
      [
        'american british californian egyptian french greek mexican moroccan spanish turkish',
        (food) => isFreshProduce(food),
      ],
    ] as [string, Fits][]
  ).flatMap(([words, fits]) => list(words).map((word): [string, Fits] => [word, fits])),
);

/** Whether a word may change nothing about a food. */
export function isPlain(word: string): boolean {
  return always.has(word) || some.has(word);
}

/** Whether a plain word that was left out changes nothing about this food. */
export function changesNothing(word: string, food: Food, said: ReadonlySet<string>, unmeasured: boolean): boolean {
  return some.get(word)?.(food, said, unmeasured) ?? true;
}
