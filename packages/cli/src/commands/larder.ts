import { nameIn, soldIn } from '@retare/core';
import type { LoadedSettings } from '@retare/larder';
import { Command, Option } from 'commander';
import { kitchenNamed } from '../kitchens-named.js';
import { explainFood } from '../larder/explain-food.js';
import { explainKitchen } from '../larder/explain-kitchen.js';
import { findEntries, likeEntries } from '../larder/find-entries.js';
import { type Section, sectionText } from '../larder/section.js';
import { type Change, siteChanges } from '../larder/site-changes.js';
import { loadSite } from '../load-site.js';
import type { Output } from '../output.js';

interface Options {
  kitchen?: string;
  role?: string;
  format: 'text' | 'json';
}

type Done = (code: number) => void;

const undone = 'Nothing was looked up.';

/** `retare larder`: foods and kitchens with their sources. Exit code 0 where something is found, 1 where nothing is. */
export function larderCommand(output: Output, done: Done): Command {
  const sub = (name: string, description: string) =>
    new Command(name)
      .description(description)
      .option('--kitchen <id>', 'only this kitchen')
      .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json']).default('text'))
      .exitOverride()
      .configureOutput({ writeOut: output.out, writeErr: output.err });
  const site = () => loadSite(undefined, output.cwd, undone);
  return new Command('larder')
    .description('Lists, finds and explains foods and kitchens, with the source of every value.')
    .addCommand(
      sub('list', 'Lists the foods of the larder, and its kitchens.')
        .option('--role <role>', 'only foods of this role: flour, liquid, fat …')
        .action((options: Options) => done(list(site(), options, output))),
    )
    .addCommand(
      sub('find', 'Finds the food that words mean.')
        .argument('<words...>', 'a food as a recipe has it')
        .action((words: string[], options: Options) => done(find(words.join(' '), site(), options, output))),
    )
    .addCommand(
      sub('show', 'Explains a food or a kitchen, with its sources.')
        .argument('<id>', 'the id of a food or kitchen')
        .action((id: string, options: Options) => done(show(id, site(), options, output))),
    )
    .addCommand(
      sub('changes', "Shows what the site's larder file changed.").action((options: Options) =>
        done(changes(site(), options, output)),
      ),
    );
}

function kitchensOf(site: LoadedSettings, { kitchen }: Options): readonly string[] {
  return kitchen === undefined ? site.settings.kitchens : [kitchenNamed(kitchen, site, undone)];
}

function write(output: Output, { format }: Options, data: unknown, text: () => string): void {
  output.out(format === 'json' ? `${JSON.stringify(data, null, 2)}\n` : `${text()}\n`);
}

function list(site: LoadedSettings, options: Options, output: Output): number {
  const { larder, settings } = site;
  const [only] = options.kitchen === undefined ? [] : kitchensOf(site, options);
  const foods = [...larder.foods.values()]
    .filter(({ role }) => options.role === undefined || role === options.role)
    .filter((food) => only === undefined || soldIn(food, only)?.sold === true)
    .map((food) => ({ id: food.id, name: nameIn(food, only ?? settings.kitchen).many, role: food.role }));
  const kitchens = [...larder.kitchens.values()].map(({ id, name }) => ({ id, name }));
  write(output, options, { foods, kitchens }, () =>
    [
      ...foods.map(({ id, name, role }) => `${id}  ${name}, ${role}`),
      `${foods.length} ${foods.length === 1 ? 'food' : 'foods'}; kitchens: ${kitchens.map(({ id }) => id).join(', ')}`,
    ].join('\n'),
  );
  return foods.length > 0 ? 0 : 1;
}

function find(words: string, site: LoadedSettings, options: Options, output: Output): number {
  const found = findEntries(words, site.larder, kitchensOf(site, options));
  const like = found.length > 0 ? [] : likeEntries(words, site.larder);
  write(output, options, { words, found, like }, () => {
    if (found.length === 0) return notFound(`No food is called \`${words}\` here`, like);
    return found
      .map(({ id, kitchens }) => [`${id}`, ...kitchens.map(({ kitchen, name }) => `  ${kitchen}: ${name}`)].join('\n'))
      .join('\n');
  });
  return found.length > 0 ? 0 : 1;
}

function notFound(what: string, like: readonly string[]): string {
  return like.length === 0
    ? `${what}. \`retare larder list\` lists them; a food of your own goes in your larder file.`
    : `${what}. Like it: ${like.join(', ')}.`;
}

function show(id: string, site: LoadedSettings, options: Options, output: Output): number {
  const { larder, siteLarder } = site;
  const kitchens = kitchensOf(site, options);
  const food = larder.foods.get(id);
  const sections: Section[] =
    food !== undefined
      ? explainFood(food, { larder, kitchens })
      : larder.kitchens.has(id)
        ? explainKitchen(id, siteLarder)
        : [];
  const isSite = siteLarder?.foods?.[id] !== undefined || siteLarder?.kitchens?.[id] !== undefined;
  const like = sections.length > 0 ? [] : likeEntries(id.replaceAll('-', ' '), larder);
  const kind = food !== undefined ? 'food' : 'kitchen';
  write(output, options, sections.length === 0 ? { id, like } : { id, kind, inSiteLarder: isSite, sections }, () =>
    sections.length === 0
      ? notFound(`There is no food and no kitchen \`${id}\``, like)
      : [`${id}${isSite ? " (in the site's larder file)" : ''}`, ...sections.map(sectionText)].join('\n'),
  );
  return sections.length > 0 ? 0 : 1;
}

function changes(site: LoadedSettings, options: Options, output: Output): number {
  const found = siteChanges(site);
  write(output, options, found, () =>
    found.length === 0 ? "The site's larder file changes nothing, or there is none." : found.map(changeText).join('\n'),
  );
  return 0;
}

function changeText({ kind, id, change, before, after }: Change): string {
  return [
    `${kind} ${id}: ${change}`,
    ...before.map((line) => `  - ${line}`),
    ...after.map((line) => `  + ${line}`),
  ].join('\n');
}
