export { amountAsWritten } from './amount/amount-as-written.js';
export { type ReadingIn, readingIn, readLine } from './amount/line/read-line.js';
export { type Around, countBeside } from './amount/mention/pan-shape.js';
export { readLength, readLengths } from './amount/mention/read-length.js';
export { type FoundMention, readMentions } from './amount/mention/read-mentions.js';
export { readOven } from './amount/mention/read-oven.js';
export { readPan } from './amount/mention/read-pan.js';
export { readTemperature } from './amount/mention/read-temperature.js';
export type * from './amount/reading.js';
export {
  centimetresIn,
  dimensionOf,
  gramsIn,
  isLengthUnit,
  isMassUnit,
  isVolumeUnit,
  type KitchenUnits,
  millilitresIn,
} from './amount/size.js';
export { type Stated, statedIn, stateOne, type Term } from './amount/stated.js';
export type * from './amount/unit.js';
export { plural, writeLabel, writeStated, writeStatement, writeTerm } from './amount/write.js';
export { Exact } from './exact.js';
export { allergensAdded, allergensOf } from './food/allergens.js';
export { type FoundFood, findFood, findFoodIn } from './food/find/find.js';
export {
  type Foods,
  indexNames,
  type NameIndex,
  type SharedName,
  sharedNames,
  useNameIndex,
} from './food/find/name-index.js';
export type * from './food/food.js';
export { nameIn, translateName } from './food/name.js';
export { findFoodOfLine, type NamedFood } from './food/of-line/find-in-line.js';
export { nothingStated, type Scales, type StatedWeights, type Weighed, weigh } from './food/weigh.js';
export { type Eggs, ediblePart, eggSizeNamed, partOfEgg, wholeEggsFor } from './kitchen/egg.js';
export {
  type BeyondDial,
  beyondDial,
  celsiusOf,
  type DialSetting,
  dialSettings,
  fahrenheitOf,
  type OvenHeat,
  ovenHeat,
  writeOven,
} from './kitchen/heat/oven.js';
export { type CoreTemperature, coreFor, inScale, isUnderdone, safeMinimum } from './kitchen/heat/safe.js';
export { temperatureFor } from './kitchen/heat/temperature.js';
export type * from './kitchen/kitchen.js';
export { lengthFor } from './kitchen/measure/length.js';
export type { Measure } from './kitchen/measure/measure.js';
export { measuresBy } from './kitchen/measure/measures-by.js';
export { nearestOf } from './kitchen/measure/nearest-of.js';
export { readPanIn, sizesNamed } from './kitchen/pan/named-pan.js';
export { type PanChoice, panFor } from './kitchen/pan/pan.js';
export { baseArea } from './kitchen/pan/pan-base.js';
export { type Bought, buy, isUseWhole, soldIn } from './kitchen/shop/buy.js';
export { counterStepGrams } from './kitchen/shop/counter.js';
export { type Remainder, remainderOf } from './kitchen/shop/remainder.js';
export { sameContainer } from './kitchen/shop/unsized-pack.js';
export { anchorLine } from './reauthor/anchor-line.js';
export type { Change } from './reauthor/infeasible/change.js';
export type { Infeasible, Obstacle } from './reauthor/infeasible/infeasible.js';
export type { PanReport } from './reauthor/outcome/pan-report.js';
export type { RatioReport } from './reauthor/outcome/ratio-report.js';
export { type AuthoredContext, type AuthoredRatio, ratiosOfVersion } from './reauthor/ratio/authored-ratios.js';
export { isBent } from './reauthor/ratio/constraint.js';
export { matchLines } from './reauthor/ratio/match-lines.js';
export {
  isRefusal,
  type Reauthored,
  type ReauthorOptions,
  type Refusal,
  reauthor,
} from './reauthor/reauthor.js';
export { defaultWeights, type RatioLimits, type Weights } from './reauthor/weights.js';
export { lineCalled } from './recipe/line-called.js';
export { codesIn, codesOfLines, codesOfMethod, isLineCode, lineCode } from './recipe/line-code.js';
export { lineOfText } from './recipe/line-of-text.js';
export { linesFor } from './recipe/lines-for.js';
export { isStricter, listedCore } from './recipe/listed-core.js';
export type * from './recipe/recipe.js';
export { type Moved, movedSince } from './recipe/stale.js';
export { withPlus } from './recipe/with-plus.js';
export { versionFor } from './version/build-version.js';
export { isHalved } from './version/convert/whole-packs.js';
export { shopFor } from './version/judge/shop.js';
export { foodsIn, servedBy } from './version/line/foods-in.js';
export { linesIn } from './version/line/joined-line.js';
export type * from './version/problem.js';
export type { Setting } from './version/setting.js';
export { listing } from './version/share/listing.js';
export { oversizing } from './version/share/oversizing.js';
export type * from './version/version.js';
export { weightsStatedIn } from './version/weigh/stated-weights.js';
export { boughtInWords } from './version/words/bought-in-words.js';
export { applyEdits, overlap, sorted } from './version/words/edit.js';
export { panCount } from './version/words/pan-in-words.js';
export { listed, oneOf } from './words/listed.js';
export { near } from './words/near.js';
export { percentWords } from './words/percent-words.js';
export { withArticle } from './words/with-article.js';
