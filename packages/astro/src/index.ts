export { default, type RetareOptions } from './integration.js';
