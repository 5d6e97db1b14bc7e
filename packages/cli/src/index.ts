export type { Output } from './output.js';
export { exitCodes, run } from './run.js';
