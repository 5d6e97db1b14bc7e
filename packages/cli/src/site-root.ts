import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The nearest folder above a file that holds `retare.yaml`; null where there is none. */
export function siteRootOf(path: string): string | null {
  for (let folder = dirname(path); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'retare.yaml'))) return folder;
    if (dirname(folder) === folder) return null;
  }
}
