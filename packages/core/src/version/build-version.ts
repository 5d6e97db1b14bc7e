import { Exact } from '../exact.js';
import type { StatedWeights } from '../food/weigh.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { hasCure } from '../recipe/has-cure.js';
import { linesFor } from '../recipe/lines-for.js';
import type { Line, Method, Part, Recipe, Steps } from '../recipe/recipe.js';
import { withPlus } from '../recipe/with-plus.js';
import { bakingCautions, cautionsFor } from './cautions.js';
import { eggsThere } from './egg/egg-lines.js';
import { buyTogether } from './judge/buy-together.js';
import { addedByAuthor } from './line/added-by-author.js';
import { convertedLine } from './line/converted-line.js';
import { joinedLine, linesIn } from './line/joined-line.js';
import { writtenLine } from './line/written-line.js';
import { kitchenOf, type Setting } from './setting.js';
import type { AmountMention } from './share/listing.js';
import { sharesOf } from './share/shares.js';
import type { Caution, Standing, Version, VersionLine, VersionMention, VersionPart, VersionSteps } from './version.js';
import { convertedMention, panMention, writtenMention } from './version-mention.js';
import { weightsStatedIn } from './weigh/stated-weights.js';
import { inBrackets } from './words/names-in-method.js';
import type { PanHere } from './words/pan-in-words.js';

/**
 * The recipe for one kitchen: as written where its author wrote for that kitchen, converted line by line elsewhere. A preserve is
 * shown as written everywhere.
 *
 * @throws {RangeError} If the recipe's native kitchen or the wanted one is not in the setting: a reader of recipes checks that first.
 */
export function versionFor(recipe: Recipe, kitchenId: string, setting: Setting): Version {
  const kitchen = kitchenOf(kitchenId, setting);
  const native = kitchenOf(recipe.kitchen, setting);
  const build: Build = { recipe, kitchen, native, setting, tolerance: setting.tolerance };
  const parts = recipe.parts.map((part) => versionPart(part, build));
  const steps = recipe.steps.map((each) => versionSteps(each, parts, build));
  const standing = standingOf(parts, kitchen, native);
  return assembled(build, { ...standing, batchFactor: new Exact(1), parts, steps, cautions: bakingCautions(steps) });
}

/** What a re-authoring has chosen. */
export interface ChosenLines {
  lines: ReadonlyMap<Line, VersionLine>;
  batchFactor: Exact;
  /** Pans that were chosen for the batch, by mention key. */
  pans: ReadonlyMap<string, ChosenPan>;
  /** What a cook has to be told of how long it bakes. */
  cautions: Caution[];
}

/** A pan that was chosen together with the lines. */
export interface ChosenPan extends PanHere {
  /** Base over the written one's, less one. */
  areaDrift: Exact;
}

/** A version made of lines that were chosen together, in the place of the native ones. */
export function versionOfLines(recipe: Recipe, kitchenId: string, setting: Setting, chosen: ChosenLines): Version {
  const kitchen = kitchenOf(kitchenId, setting);
  const native = kitchenOf(recipe.kitchen, setting);
  const build: Build = { recipe, kitchen, native, setting, tolerance: setting.tolerance };
  const parts = recipe.parts.map((part): VersionPart => {
    const lines = part.native.lines.flatMap((line) => chosen.lines.get(line) ?? []);
    return { part, ingredients: part.native, standing: 're-authored', lines };
  });
  const steps = recipe.steps.map((each): VersionSteps => {
    const mentions = convertedMentions(each.native, parts, build).map((own) => {
      const pan = chosen.pans.get(own.mention.key);
      if (own.mention.kind !== 'pan' || pan === undefined) return own;
      return panMention(own.mention, pan, pan.areaDrift, native, kitchen);
    });
    return { steps: each, from: each.native.kitchen, mentions };
  });
  const { batchFactor, cautions } = chosen;
  return assembled(build, { standing: 're-authored', cooked: null, batchFactor, parts, steps, cautions });
}

/** @param made Its cautions are those of how long it bakes. */
function assembled({ recipe, kitchen }: Build, made: Omit<Version, 'recipe' | 'kitchen'>): Version {
  const version: Version = {
    recipe,
    kitchen,
    ...made,
    parts: inBrackets(buyTogether(made.parts, kitchen), made.steps),
  };
  return { ...version, cautions: [...cautionsFor(version), ...made.cautions] };
}

interface Build {
  recipe: Recipe;
  kitchen: Kitchen;
  native: Kitchen;
  setting: Setting;
  tolerance: Exact;
}

function versionPart(part: Part, { recipe, kitchen, native, tolerance, setting }: Build): VersionPart {
  const own =
    part.native.kitchen === kitchen.id ? part.native : part.authored.find((each) => each.kitchen === kitchen.id);
  if (own !== undefined && (own === part.native || recipe.preserve !== true)) {
    // What one part says of a food's weight holds in every part.
    const ownWeights = weightsStatedIn(linesFor(recipe, own.kitchen), kitchen);
    const beside = { lines: withPlus(part.native.lines), native, kitchen, foods: setting.foods };
    const lineOf = (line: Line): VersionLine => {
      const written = writtenLine(line, kitchen, ownWeights, tolerance);
      return own === part.native ? written : { ...written, notes: [...written.notes, ...addedByAuthor(line, beside)] };
    };
    const lines = own.lines.map((line) => joinedLine(line, lineOf, kitchen));
    return { part, ingredients: own, standing: authoredStanding(own === part.native, own.cooked), lines };
  }
  const ownWeights = weightsStatedIn(linesFor(recipe, native.id), native);
  const eggs = eggsThere(recipe, native, kitchen, ownWeights);
  const besideCure = hasCure(recipe);
  const conversion = { native, kitchen, ownWeights, eggs, foods: setting.foods, besideCure };
  const lineOf = (line: Line): VersionLine =>
    recipe.preserve === true
      ? asWritten(line, native, ownWeights, tolerance)
      : convertedLine(line, conversion, tolerance, setting.foods);
  const lines = part.native.lines.map((line) => joinedLine(line, lineOf, kitchen));
  return { part, ingredients: part.native, standing: recipe.preserve === true ? 'native' : 'converted', lines };
}

/** A preserve's balance of sugar, acid and fruit is what keeps it: nothing of it is changed. */
function asWritten(line: Line, native: Kitchen, ownWeights: StatedWeights, tolerance: Exact): VersionLine {
  return {
    ...writtenLine(line, native, ownWeights, tolerance),
    problems: [],
    bought: null,
    notes: [{ kind: 'as-written' }],
  };
}

function authoredStanding(isNative: boolean, cooked: string | null): Standing {
  if (isNative) return 'native';
  return cooked === null ? 're-authored' : 'cooked';
}

function versionSteps(steps: Steps, parts: readonly VersionPart[], build: Build): VersionSteps {
  const { recipe, kitchen } = build;
  const own =
    steps.native.kitchen === kitchen.id ? steps.native : steps.authored.find((each) => each.kitchen === kitchen.id);
  if (own !== undefined || recipe.preserve === true) {
    const method = own ?? steps.native;
    const from = build.setting.kitchens.get(method.kitchen) ?? build.native;
    return { steps, from: method.kitchen, mentions: method.mentions.map((mention) => writtenMention(mention, from)) };
  }
  return { steps, from: steps.native.kitchen, mentions: convertedMentions(steps.native, parts, build) };
}

function convertedMentions(
  method: Method,
  parts: readonly VersionPart[],
  { recipe, kitchen, native, setting }: Build,
): VersionMention[] {
  const lines = parts.flatMap((part) => part.lines.flatMap(linesIn));
  const nativeLines = parts.flatMap(({ part }) => withPlus(part.native.lines));
  const ownWeights: StatedWeights = weightsStatedIn(nativeLines, native);
  const amounts = method.mentions.filter((mention): mention is AmountMention => mention.kind === 'amount');
  const eggs = eggsThere(recipe, native, kitchen, ownWeights);
  const conversion = { native, kitchen, ownWeights, eggs, foods: setting.foods, besideCure: hasCure(recipe) };
  const shares = sharesOf(amounts, nativeLines, lines, conversion, setting.foods);
  return method.mentions.map((mention) => convertedMention(mention, native, kitchen, shares.get(mention.key) ?? []));
}

const finished: readonly Standing[] = ['converted', 're-authored', 'cooked', 'native'];

/** A version is as finished as its least finished part. */
function standingOf(
  parts: readonly VersionPart[],
  kitchen: Kitchen,
  native: Kitchen,
): { standing: Standing; cooked: string | null } {
  if (kitchen.id === native.id) return { standing: 'native', cooked: null };
  const standings = parts.map((part) => part.standing);
  const standing = finished.find((each) => standings.includes(each)) ?? 'converted';
  const dates = parts.flatMap(({ ingredients }) => ingredients.cooked ?? []).sort();
  return { standing, cooked: standing === 'cooked' ? (dates[0] ?? null) : null };
}
