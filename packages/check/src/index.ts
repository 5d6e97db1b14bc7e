export { checkFiles } from './check-files.js';
export { type CheckedPost, checkPost, type Site } from './check-post.js';
export type { FindingSeverity } from './finding.js';
export { parsePost } from './parse-post.js';
export { type PreserveQuestion, preserveQuestion } from './preserve-question.js';
export { type JsonFinding, jsonReport, type Summary, summarise, summaryLine, textReport } from './report.js';
export { packWords } from './rules/words.js';
