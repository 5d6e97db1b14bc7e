// Copies the rows of the USDA table that the larder names: node tests/reference/copy-usda-rows.ts <usda-household-weights.csv>
import { readFileSync, writeFileSync } from 'node:fs';
import { builtInLarder } from '@retare/larder';
import { parseCsv } from './read-csv.ts';
import { usdaSource } from './usda-source.ts';

const [, , table] = process.argv;
if (table === undefined) throw new Error('Which table? Give the path of the USDA household weights as CSV');

const named = new Set<string>();
for (const { densities, pieces } of builtInLarder().foods.values()) {
  for (const { source } of [...densities, ...pieces]) {
    const ndb = usdaSource(source)?.ndb;
    if (ndb !== undefined) named.add(ndb);
  }
}

const columns = ['ndb_no', 'description', 'amount', 'measure', 'grams', 'source'] as const;
const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
const rows = parseCsv(readFileSync(table, 'utf8')).filter((row) => named.has(row.ndb_no ?? ''));
const lines = [columns.join(','), ...rows.map((row) => columns.map((column) => quoted(row[column] ?? '')).join(','))];
writeFileSync(new URL('usda-rows.csv', import.meta.url), `${lines.join('\n')}\n`);
console.log(`usda-rows.csv: ${rows.length} rows of ${named.size} foods`);
