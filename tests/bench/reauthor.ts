import { corpusFolder, hasCorpus } from '../corpus/corpus.ts';
import { printBenchmark } from './print-benchmark.ts';
import { runBenchmark } from './run-benchmark.ts';

/** Prints what re-authoring every recipe of the collection for every other kitchen comes to; `--troubles` lists what went wrong where. */
if (hasCorpus()) printBenchmark(runBenchmark(), process.argv.includes('--troubles'));
else {
  console.log(
    `No collection in ${corpusFolder()}: set RETARE_CORPUS to the folder that holds labels.jsonl. Nothing was measured.`,
  );
  process.exitCode = process.env.CI === undefined ? 0 : 1;
}
