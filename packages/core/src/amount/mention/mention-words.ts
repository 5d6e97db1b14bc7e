function list(words: string): ReadonlySet<string> {
  return new Set(words.trim().split(/\s+/u));
}

/** Words near a temperature that say whose it is: the nearest before it counts. Common usage of recipe writers, no source. */
export const heatWords: ReadonlyMap<string, 'oven' | 'core' | 'temp'> = new Map([
  ...[
    ...list(
      'oven ovens bake bakes baked baking roast roasted preheat preheated pre-heat heating-element broil broiler',
    ),
  ].map((word) => [word, 'oven'] as const),
  ...[
    ...list(
      'internal internally inside core interior centre center probe thermometer registers register reads read doneness thickest inserted insert',
    ),
  ].map((word) => [word, 'core'] as const),
  ...[
    ...list(
      'oil water milk fryer fry frying deep-fryer smoker smoke grill griddle dehydrator air room fridge refrigerator freezer wort syrup caramel sugar yeast lukewarm proof ferment fermentation sous bath lard fat chocolate candy brine tea rise place spot bowl dough kettle liquid broth stock starter skillet wok',
    ),
  ].map((word) => [word, 'temp'] as const),
]);

/** Said of food that is tested for doneness, before a meat's temperature. */
export const reachingWords = list('reaches reach reached hits hit');

/** Foods whose inside is measured. */
export const meats = list(
  'chicken turkey pork beef lamb veal meat meats steak steaks roast fish salmon ham brisket meatloaf meatballs burgers burger sausages sausage breast breasts thighs thigh duck goose ribs loin tenderloin shoulder casserole',
);

/** Said of turning something round: degrees behind it are an angle. */
export const turningWords = list(
  'rotate rotating turn turning twist twisting angle angled spin flip pivot degree-twist',
);

/** Behind degrees, they make them an angle. */
export const angleWords = list('angle twist turn rotation angles turns');

/** Vessels that are named by their size. */
export const vessels = list(
  `pan pans dish dishes tin tins tray trays pot pots jar jars skillet skillets saucepan saucepans casserole sheet sheets springform stockpot wok mould
  moulds mold molds ramekin ramekins crock dutch kettle cooker pie-dish pyrex cocotte terrine roaster`,
);

/** Words that may stand between a size and its vessel. */
export const vesselKinds = list(
  `baking glass saute sauté sautee frying fry springform soup loaf cake casserole roasting roast nonstick non-stick non stick deep shallow round square metal
  heavy heavy-bottomed bottomed cast iron cast-iron stock sauce pie tart mason standard large small medium covered ovenproof oven-proof oven proof safe greased
  ungreased buttered oiled lined muffin bundt tube ceramic rectangular oblong dutch spring form quiche brownie sheet steel stainless enameled enamel wide sided high
  bread jelly roll crock slow instant pressure copper aluminum aluminium silicone pyrex disposable foil cooking canning and a the`,
);
