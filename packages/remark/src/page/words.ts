import { type Caution, type Exact, type Kitchen, type Version, withArticle } from '@retare/core';

/** All that the page says in its own voice, in one place. */
export const pageWords = {
  chooser: 'Cook this in',
  working: 'How these amounts were worked out',
  shopping: 'What to buy, and what will be left',
  authority: 'Follow your own food-safety authority.',
} as const;

/** How finished a version is, in plain words; null for the native one. */
export function standingWords({ standing, cooked, kitchen }: Version): string | null {
  const where = `${withArticle(kitchen)} kitchen`;
  switch (standing) {
    case 'native':
      return null;
    case 'converted':
      return `For ${where}: worked out by calculation, not cooked yet.`;
    case 're-authored':
      return `For ${where}: rewritten by the author, not cooked yet.`;
    case 'cooked':
      return `For ${where}: rewritten by the author, and cooked on ${dateWords(cooked ?? '')}.`;
  }
}

/** How cups are filled, said once, where a kitchen measures by cups. */
export function cupWords(kitchen: Kitchen): string | null {
  return kitchen.cups === null ? null : `Cups are ${kitchen.fill}.`;
}

/** A caution in the reader's words. */
export function cautionWords(caution: Caution): string {
  switch (caution.kind) {
    case 'preserve':
      return `This is a preserve: its amounts are shown as they were written, in every kitchen. Do not change or scale them, and use a tested recipe for anything that is to be kept. ${pageWords.authority}`;
    case 'cure':
      return `Curing salt is shown as it was written, by weight, in every kitchen. Weigh it, and what it cures, and never put another salt in its place. What it acts on is rounded up, never down. ${pageWords.authority}`;
    case 'raw-egg':
      return `There is egg in this that is eaten raw or barely cooked. For small children, in pregnancy, in old age and in illness use pasteurised egg, or leave it. ${pageWords.authority}`;
    case 'oven': {
      const { end, mark, asked, unit } = caution.beyond;
      const heat = `${asked}°${unit}`;
      const asks = `The recipe asks for ${heat}${caution.text === heat ? '' : ` (${caution.text})`}. An oven here goes only as`;
      return end === 'hottest'
        ? `${asks} high as ${mark}°${unit}: set it to that, and go by how it looks, for the time may change.`
        : `${asks} low as ${mark}°${unit}, which is too hot: do not set it to that instead. A warm place may do.`;
    }
    case 'core-temperature':
      return `Measure core temperatures with a thermometer, in the thickest part. ${caution.authority === '' ? '' : `The figures here are those of ${caution.authority}, or higher. `}${pageWords.authority}`;
    case 'bake': {
      const more = !caution.drift.isNegative();
      const by = `${caution.drift.abs().times(100).toDecimalPlaces(0)} %`;
      const what =
        caution.changed === 'depth'
          ? `It stands ${by} ${more ? 'deeper' : 'shallower'} in this pan`
          : `This batch is ${by} ${more ? 'larger' : 'smaller'}`;
      return `${what}: the time may change, so go by how it looks and by the thermometer.`;
    }
  }
}

/** `5.9 % less`, `1.2 % more`, `the same`. */
export function percent(drift: Exact): string {
  const value = drift.times(100).toDecimalPlaces(1);
  if (value.isZero()) return 'the same';
  return `${value.abs()} % ${value.isNegative() ? 'less' : 'more'}`;
}

function dateWords(iso: string): string {
  const date = new Date(`${iso}T00:00:00Z`);
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
