import * as remark from 'remark-retare';
import { expect, test } from 'vitest';

test('the package exports what it says, and no more', () => {
  expect(Object.keys(remark).sort()).toEqual([
    'annotations',
    'attachSyntax',
    'attributePlace',
    'default',
    'draftsOf',
    'isAnnotation',
    'isMerged',
    'larderOf',
    'massWords',
    'matterOf',
    'openingLine',
    'placeInTree',
    'placeOf',
    'placementsOf',
    'plainLines',
    'readFrontMatter',
    'readPlainPost',
    'readPost',
    'readRecipe',
    'readerStyle',
    'restoreForeign',
    'settingOf',
    'versionsOf',
    'withoutMark',
    'wordsOf',
  ]);
});
