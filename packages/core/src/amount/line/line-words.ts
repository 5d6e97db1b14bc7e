// Word lists only, kept together so that a word's place in one list can be weighed against the others; hence the length.

/** Word lists that the reading of a line rests on. Lower case; common usage of recipe writers, no source. */
function list(words: string): ReadonlySet<string> {
  return new Set(words.split(/\s+/u).filter((word) => word !== ''));
}

/** Gestures: never an amount, with or without a number. */
export const gestures = list(`
  splash splashes squeeze squeezes squirt squirts drizzle drizzles glug glugs sprinkle sprinkles sprinkling shake shakes hint hints tad
  touch trace traces dab dabs dusting dust dollop dollops knob knobs pat pats thumb thumbs coating grind grinds grating smidgen smidge
  swirl swirls spritz lick lashings glob globs slug slugs swig scattering smattering smear
`);

/** Words for no number in particular. */
export const vagueWords = list(`
  some few several little bit lot lots plenty enough any many much various as loads tons amount number
`);

/** Words behind a number that make it no quantity of the food: time, people, proportion. */
export const notCounted = list(`
  minute minutes min mins hour hours hr hrs day days week weeks month months year years second seconds sec people person persons
  times time degrees degree ° º ˚ percent per % ingredient ingredients step steps mark
`);

/** Proportions: `1/2 part`, `1 unit`. */
export const proportions = list('part parts unit units');

/** Words before a fruit that is used for its juice or skin. */
export const fruitParts = list('juice juices zest rind peel');

/** Taken off the front of a food's name. */
export const leadingPreparation = list(`
  lg lrg med sm xl mid-sized uncoocked undercooked day-old store-bought homemade home-made leftovers
  fresh freshly ripe overripe unripe raw good great nice best quality high-quality high boneless skinless bone-in skin-on bone skin whole warm cold lukewarm
  hot boiling boiled ice-cold chilled cool tepid room temperature chopped diced minced sliced grated shredded crumbled crushed quartered
  halved cubed peeled cored seeded deseeded pitted stoned trimmed washed rinsed drained soaked squeezed fresh-squeezed juiced zested
  melted softened soft cooked uncooked precooked pre-cooked parboiled blanched steamed mashed pureed puréed beaten whisked whipped sifted
  packed loosely lightly firmly finely coarsely roughly thinly thickly very well torn cut julienned shaved flaked pounded thawed defrosted
  toasted-and roasted live lean mild firm large small medium jumbo big extra-large medium-sized little tiny huge giant sized average favourite favorite your
  my our the a an of additional extra more other some any any-kind preferably optional optionally heaped heaping
  rounded level scant generous unbleached reconstituted prepared reserved leftover liquified liquefied crumbling slivered concentrated
  cleaned picked stemmed hulled shelled deveined butterflied scrubbed sour-tasting
  medium-size bite-sized basic simple easy size thick thin thick-cut thinly-sliced thinly-cut plump healthy full standard regular about quarter
  quartering low-salt non-uht unflavored unsweetened unflavoured unseasoned dry crisp crispy tough desired needed each
`);

/** Kept although they look like preparation: part of a name (`toasted sesame oil`, `whole milk`). */
export const keptPairs: Readonly<Record<string, readonly string[]>> = {
  whole: [
    'milk',
    'wheat',
    'grain',
    'kernel',
    'meal',
    'wholewheat',
    'cream',
    'egg',
    'chicken',
    'rye',
    'spelt',
    'allspice',
    'foods',
    'fat',
  ],
  extra: ['virgin', 'firm', '-'],
  dry: ['milk', 'mustard', 'white', 'red', 'sherry', 'yeast', 'vermouth', 'wine', 'ice', 'cider', 'marsala', 'aged'],
  sour: ['cream'],
  hot: [
    'sauce',
    'pepper',
    'peppers',
    'dog',
    'dogs',
    'chocolate',
    'paprika',
    'chili',
    'chilli',
    'cross',
    'smoked',
    'italian',
    'mustard',
  ],
  cold: ['cuts', 'brew', 'pressed', 'smoked'],
  skin: ['-'],
  the: [],
  crushed: ['red'],
  good: [],
  full: ['cream', 'fat'],
  soft: ['cheese', 'brown', 'tofu'],
  firm: ['tofu'],
  whipped: ['cream', 'topping'],
  whipping: ['cream'],
  quarter: ['pounder'],
  quality: [],
  bone: ['broth', 'marrow'],
  mashed: ['potato'],
  medium: ['grain', 'egg noodle', 'egg noodles', 'cheddar'],
  little: ['gem', 'gems'],
  baby: [],
  raw: ['sugar'],
  small: [],
  mild: ['cheddar', 'sausage', 'salsa'],
  temperature: [],
  sliced: ['bread'],
  shredded: ['wheat'],
  leftover: [],
  high: ['-'],
  size: [],
  ripe: [],
  thick: ['cut'],
  big: [],
  soaked: [],
  reserved: [],
  boiling: ['onions', 'potatoes'],
  other: [],
  cut: [],
  crisp: ['bread'],
  best: [],
};

/** A food's name ends before these. */
export const nameEnders = list(`
  for in with without to at on as from per that which who if when while until because but cut plus minus such like preferably about around
  approximately roughly divided finely coarsely roughly thinly thickly freshly lightly loosely firmly well very your my i you we not no
  e.g i.e eg ie via into until garnish optional optionally including weighing delivering yielding depending using mixed beaten sliced
  chopped thin thinly fine roughly each apiece can could should would may is are was were has have worth according instead alternatively
  though although where so also than x needed whichever whatever then since torn cooked
  ground-up through against under over off up out halved quartered peeled whole-ish ready please see use soaked
`);

/** Verbs that begin a step or a tip, which stands in a list by accident. */
export const imperatives = list(`
  add adjust allow apply assemble bake baste beat blend boil bring brown brush buy check choose chop combine cook cool cover crack cut deglaze dice
  dip discard divide do dont don't drain drop dust enjoy feel fill find flip fold follow fry garnish get give go grab grate grease grill
  grind have heat increase keep knead leave let lay line lower make marinate measure melt mix note pat peel pick place pour preheat prepare
  press put reduce refrigerate remember remove repeat reserve rest return rinse roast roll rub sauté saute scoop score scrape sear season
  separate serve set shape shred sift simmer skip slice smack soak spread sprinkle squeeze stir store strain taste take toast top toss
  transfer trim try turn use wait warm wash whisk wipe wrap
`);

/** First words that no food's name has: verbs of a step, and words that begin a sentence. */
export const stepOpeners = list(`
  add heat whisk preheat pour stir combine transfer remove wait saute sauté sautee place put bring make repeat drape massage throw pull ask
  refrigerate refridgerate once when if after while before note tip protip do don't discard flip knead simmer deglaze assemble enjoy enojoy
`);

/** Words further on that show a first verb to be an order: `Chop vegetables into pieces`. */
export const stepMarkers = list(
  'into until together aside minutes minute hours skillet saucepan oven bowl heat mixture ingredients contents',
);

/** Words that stand for no food, so that they need the noun of the other side: `white or yellow corn`. */
export const plainAdjectives = list(`
  white yellow red green black brown dark light golden purple pink sweet sour spicy mild hot smoked unsmoked dried fresh frozen canned salted unsalted ground
  whole plain natural skimmed skim low-sodium low-fat reduced-fat full-fat all-purpose self-rising self-raising granulated powdered large small medium long
  short thin thick flat curly unbleached bleached raw cooked organic crunchy smooth creamy boneless skinless lean
`);

/** Words that show an imperative to be one: `Cut the pork`, `Fill a pan`, `Have good ventilation.` */
export const objects = list(
  'the a an it them this that these those your in into with until all everything up down on each some off out to for over good',
);

/** Kit: a line whose last name is one of these is no ingredient. */
export const kit = list(`
  thermometer cooker pan pans pot pots skillet wok tray trays skewer skewers toothpick toothpicks twine parchment foil blender mixer processor
  grinder scale scales bowl bowls whisk spatula knife knives board cheesecloth colander sieve strainer oven grill smoker rack cutter cutters
  marble marbles muslin airlock jar jars bottle bottles bag bags funnel tongs griddle steamer grater peeler mandoline
  ramekin ramekins mold mould molds moulds lid lids container containers fryer dehydrator stockpot saucepan
  scissors dish dishes towel towels gloves recipient brush paper liner liners string
`);

/** Kit only with another word before it, since alone it is food or unclear. */
export const sentimentWords = list('patience love enjoy enjoyment enojoy hunger courage time friends appetite');

/** Words that share their head noun when joined by `or`: `chicken or beef broth`. */
export const modifiers = list(`
  creole cajun gochujang tamari hot-dog hamburger burger shaoxing rapeseed pine
  chicken beef pork turkey lamb fish vegetable veggie mushroom veal duck seafood ham bacon wheat rye corn rice oat spelt almond soy soya coconut cashew hazelnut
  white yellow red green black brown dark light golden blue purple orange pink swiss rainbow savoy sweet sour spicy mild hot smoked
  unsmoked dried fresh frozen canned salted unsalted ground minced whole plain greek natural english french italian lemon lime orange
  apple pear peach cherry grape grapefruit olive canola sunflower rapeseed peanut sesame grapeseed avocado
  cheddar jack mozzarella parmesan pecorino gruyere swiss cotija jalapeno jalapeño serrano poblano bell habanero thai roma plum cherry
  grape napa iceberg romaine russet yukon idaho kidney pinto navy cannellini garbanzo lima heavy double single whipping semi skimmed skim
  low-sodium low-fat reduced-fat full-fat self-rising self-raising all-purpose strong kosher sea table granulated caster icing
  powdered confectioners raspberry strawberry apricot blueberry walnut pecan hazelnuts dijon yellow-mustard vanilla chocolate bittersweet semisweet
  baby large small short long medium thin thick flat curly spring button cremini chestnut portobello shiitake maple
`);

/** Foods of their own that are modifiers before these heads only: `flour or corn tortillas`, `sherry or wine vinegar`. */
export const modifiersOf: Readonly<Record<string, readonly string[]>> = {
  flour: ['tortillas', 'tortilla', 'tacos'],
  milk: ['chocolate'],
  bread: ['flour'],
  cake: ['flour'],
  sherry: ['vinegar'],
  wine: ['vinegar'],
  cider: ['vinegar'],
  balsamic: ['vinegar'],
  butter: ['lettuce', 'beans'],
};

/** Head nouns that such pairs share. */
export const sharedHeads = list(`
  seasoning rub dressing
  broth stock bouillon flour flours vinegar oil oils chard onion onions pepper peppers wine beans bean tea rice sugar sugars juice cheese cream milk
  sausage sausages tortillas tortilla noodles mushrooms mushroom potatoes potato chocolate lettuce cabbage mustard meat mince steak thighs thigh breast
  breasts wings salt butter yogurt yoghurt lentils tomatoes tomato syrup jam bread chips powder seeds seed nuts sauce paste salsa leaves
  apples apple grapes raisins olives shrimp fillets fillet roast chops ribs bacon corn extract chile chiles chilies chillies chili parsley basil peas cherries
`);

/** Said of the ingredient: it may be left out. */
export const optionalPhrases: readonly (readonly string[])[] = [
  ['if', 'you', 'like'],
  ['if', 'you', "'d", 'like'],
  ['if', "you'd", 'like'],
  ['if', 'liked'],
  ['if', 'desired'],
  ['if', 'you', 'desire'],
  ['if', 'you', 'wish'],
  ['if', 'you', 'want'],
  ['if', 'wanted'],
  ['if', "that's", 'your', 'thing'],
  ['if', 'you', 'fancy'],
  ['if', 'you', 'feel', 'like', 'it'],
  ['if', "you're", 'into', 'that'],
];

/** Behind a quantity, it names each of what was counted. */
export const eachWords = list('each apiece ea');

/** Before a quantity, it says another thing's amount, so that it is not the amount of the line's food. */
export const blockers = list(`
  in into to for with per makes make serves serve yields yield cut of at by on through within every than added contained after before between over
  under minus like use used takes feeds and or plus from than only until x
`);

/** Words that state the same quantity again: `a chicken weighing 2 kg`. */
export const restating: readonly (readonly string[])[] = [
  ['that', 'weighs'],
  ['which', 'weighs'],
  ['weighing'],
  ['weighs'],
  ['delivering'],
  ['yielding'],
  ['this', 'is'],
  ['which', 'is'],
  ['that', 'is'],
  ["that's"],
  ['equals'],
  ['equal', 'to'],
  ['equivalent', 'to'],
  ['i.e'],
  ['i', '.', 'e', '.'],
  ['in', 'total'],
  ['total'],
  ['or'],
  ['from'],
];

/** Parts of a food that may be named where its quantity is stated again. */
export const partsOfFood = list(`
  kernel kernels floret florets piece pieces meat flesh juice leaf leaves clove cloves slice slices bulb bulbs stalk stalks head heads total
  weight worth packed to of a the each-way chopped diced sliced minced grated shredded cubed mashed cooked raw dry peeled drained small medium large extra jumbo ripe whole size sized fresh
`);
