/** Words that say how a food looks, keeps or was handled, and never make another food of it. */
export const plainWords: ReadonlySet<string> = new Set(
  `fresh freshly large small medium big extra jumbo baby young ripe raw good quality best organic plain regular ordinary
  boneless skinless bone in skin on lean whole hulled shelled peeled pitted trimmed chopped diced sliced minced crushed grated
  shredded thick thin thinly finely coarsely roughly hot cold warm cool room temperature softened melted unsweetened
  yukon gold russet waxy floury english persian curly flat leaf leaves stalks stalk florets fillet fillets loin steaks pieces
  piece cubes chunks wedges halves heads head cloves clove sprigs sprig bulb bulbs ears ear of the a an some very new crisp
  firm cooked uncooked free range wild pasture raised sustainably low sodium unsalted reduced drained rinsed spice enriched sifted unbleached strained spicy long short homemade favourite favorite bottled packed
  heaping heaped seasonal beaten washed cleaned deveined unpeeled stemmed quartered halved julienned cored deseeded seeded un store
  bought authentic italian`.split(/\s+/),
);
