import type { Root } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { attachSyntax } from 'remark-retare';
import { type Processor, unified } from 'unified';
import type { VFile } from 'vfile';

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkGfm)
  .use(function (this: Processor) {
    attachSyntax(this);
  })
  .freeze();

/** A post's tree as it lies on disk, front matter included, so that places are those of the file. */
export function parsePost(file: VFile): Root {
  return parser.parse(file);
}
