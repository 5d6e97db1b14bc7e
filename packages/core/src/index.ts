export type * from './amount/reading.js';
export type * from './amount/unit.js';
export { Exact } from './exact.js';
export type * from './food/food.js';
export type * from './kitchen/kitchen.js';
