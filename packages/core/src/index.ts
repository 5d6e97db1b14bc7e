export { readLength } from './amount/read-length.js';
export { type ReadingIn, readingIn, readLine } from './amount/read-line.js';
export { type FoundMention, readMentions } from './amount/read-mentions.js';
export { readOven } from './amount/read-oven.js';
export { readPan } from './amount/read-pan.js';
export { readTemperature } from './amount/read-temperature.js';
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
export { plural, writeNumber, writeStated, writeStatement, writeTerm } from './amount/write.js';
export { Exact } from './exact.js';
export { type FoundFood, findFood, findFoodIn } from './food/find.js';
export { findFoodOfLine, type NamedFood } from './food/find-in-line.js';
export type * from './food/food.js';
export { nameIn, translateName } from './food/name.js';
export {
  type Foods,
  indexNames,
  type NameIndex,
  type SharedName,
  sharedNames,
  useNameIndex,
} from './food/name-index.js';
export { densityOf, nothingStated, type Scales, type StatedWeights, type Weighed, weigh } from './food/weigh.js';
export { type Bought, buy, counterStepGrams, isUseWhole, soldIn } from './kitchen/buy.js';
export { type Eggs, ediblePart, eggSizeNamed, partOfEgg, wholeEggs } from './kitchen/egg.js';
export type * from './kitchen/kitchen.js';
export { lengthFor } from './kitchen/length.js';
export { type Measure, measuresBy, nearestOf } from './kitchen/measure.js';
export { readPanIn, sizesNamed } from './kitchen/named-pan.js';
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
} from './kitchen/oven.js';
export { type PanChoice, panFor } from './kitchen/pan.js';
export { baseArea } from './kitchen/pan-base.js';
export { type Remainder, remainderOf } from './kitchen/remainder.js';
export { type CoreTemperature, coreFor, isUnderdone, safeMinimum } from './kitchen/safe.js';
export { temperatureFor } from './kitchen/temperature.js';
export { packMeant, sameContainer } from './kitchen/unsized-pack.js';
export { anchorLine } from './reauthor/anchor-line.js';
export { type AuthoredContext, type AuthoredRatio, ratiosOfVersion } from './reauthor/authored-ratios.js';
export type { Change } from './reauthor/change.js';
export type { Infeasible, Obstacle } from './reauthor/infeasible.js';
export { matchLines } from './reauthor/match-lines.js';
export {
  isRefusal,
  type PanReport,
  type RatioReport,
  type Reauthored,
  type ReauthorOptions,
  type Refusal,
  reauthor,
} from './reauthor/reauthor.js';
export { defaultWeights, type RatioLimits, type Weights } from './reauthor/weights.js';
export { lineCalled } from './recipe/line-called.js';
export { codesIn, codesOfLines, codesOfMethod, isLineCode, lineCode, mentionCode } from './recipe/line-code.js';
export { linesFor } from './recipe/lines-for.js';
export { isStricter, listedCore } from './recipe/listed-core.js';
export type * from './recipe/recipe.js';
export { type Moved, movedSince } from './recipe/stale.js';
export { boughtInWords } from './version/bought-in-words.js';
export { type Setting, versionFor } from './version/build-version.js';
export { type Conversion, convertAmount } from './version/convert-amount.js';
export { applyEdits, sorted } from './version/edit.js';
export { foodsIn, servedBy } from './version/foods-in.js';
export { listing } from './version/listing.js';
export { oversizing } from './version/oversizing.js';
export { panCount } from './version/pan-in-words.js';
export type * from './version/problem.js';
export { shopFor } from './version/shop.js';
export { weightsStatedIn } from './version/stated-weights.js';
export type * from './version/version.js';
