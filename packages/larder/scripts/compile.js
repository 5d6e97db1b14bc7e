// Puts foods/*.yaml and kitchens/*.yaml together as dist/larder.json, and writes the JSON Schemas and the page of foods. Runs after `tsc --build`.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileLarder } from '../dist/compile/compile-larder.js';
import { compiledText } from '../dist/compile/compiled-text.js';
import { foodsPage } from '../dist/page/foods-page.js';
import { problemLine } from '../dist/read/problem.js';
import { readCompiled } from '../dist/read-compiled.js';
import { jsonSchemas } from '../dist/schema/json-schemas.js';

const root = new URL('../', import.meta.url);

const filesOf = (folder) =>
  readdirSync(new URL(`${folder}/`, root))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const url = new URL(`${folder}/${name}`, root);
      return { path: relative(process.cwd(), fileURLToPath(url)), text: readFileSync(url, 'utf8') };
    });

const { data, problems } = compileLarder(filesOf('kitchens'), filesOf('foods'));
for (const problem of problems) console.error(problemLine(problem));
if (problems.length > 0) {
  console.error(`larder.json was not written: ${problems.length} ${problems.length === 1 ? 'problem' : 'problems'}`);
  process.exitCode = 1;
} else {
  const text = compiledText(data);
  writeFileSync(new URL('dist/larder.json', root), text);
  writeFileSync(new URL('dist/foods.html', root), foodsPage(readCompiled(Buffer.from(text))));
  for (const [name, schema] of Object.entries(jsonSchemas())) {
    writeFileSync(new URL(`dist/${name}`, root), `${JSON.stringify(schema, null, 2)}\n`);
  }
  console.log(`larder.json: ${Object.keys(data.foods).length} foods, ${Object.keys(data.kitchens).length} kitchens`);
}
