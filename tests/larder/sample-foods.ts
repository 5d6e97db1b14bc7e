/** Three foods as a data file has them: one by volume, one in packs, one that is counted. Weights from USDA SR26. */
export const sampleFoods = `
- id: plain-flour
  names:
    any: [plain flour]
    us: [all-purpose flour]
  role: flour
  densities: [{ grams: 125, per: cup, source: 'USDA SR26 20081, cup' }]
  keeps: { where: cupboard, freezes: true, least: 100, source: 'common practice, no source' }
  allergens: [gluten]
  sold: { any: { packs: [{ size: 1 kg, word: bag, whole: no }], source: 'common practice, no source' } }
- id: double-cream
  names: { any: [double cream] }
  role: liquid
  pours: true
  densities: [{ grams: 238, per: cup, source: 'USDA SR26 01053, cup, fluid' }]
  keeps: { where: fridge, days: 3, freezes: false, least: 50, source: 'common practice, no source' }
  allergens: [milk]
  sold:
    us: { packs: [{ size: 1 pint, word: carton, whole: no }], source: 'common practice, no source' }
    any: { packs: [{ size: 150 ml, word: pot, whole: no }, { size: 300 ml, word: pot, whole: no }], source: 'common practice, no source' }
- id: tart
  names: { any: [tart/tarts] }
  role: bulk
  pieces: [{ unit: count, grams: 90, source: 'from memory' }]
  keeps: { where: fridge, days: 2, freezes: false, least: 20, source: 'common practice, no source' }
  contains: [{ food: plain-flour, share: 1/2 }]
  sold: { any: { singly: true, source: 'common practice, no source' } }
`;
