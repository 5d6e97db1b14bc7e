import { expect, test } from 'vitest';
import { leastLeft } from './least-left.ts';

test.each([
  { need: 240, share: 0.08, sizes: [250, 500], left: 0, why: 'a tub is within reach' },
  { need: 480, share: 0.08, sizes: [250, 500], left: 0, why: 'two small ones or a large one' },
  { need: 100, share: 0.08, sizes: [250], left: 142, why: 'as much as may be goes in' },
  { need: 300, share: 0, sizes: [250, 500], left: 200, why: 'nothing is bent' },
  { need: 740, share: 0.02, sizes: [250, 500], left: 0, why: 'one of each' },
])('what is left where $need g may be bent by $share: $why', ({ need, share, sizes, left }) => {
  expect(leastLeft(need, share, sizes)).toBeCloseTo(left, 9);
});
