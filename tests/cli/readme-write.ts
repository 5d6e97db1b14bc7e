import { writeFileSync } from 'node:fs';
import { readme, readmeUrl, withExample } from './readme-example.ts';

writeFileSync(readmeUrl, withExample(readme()));
