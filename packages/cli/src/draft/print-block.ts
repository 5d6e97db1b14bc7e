import type { List, Nodes, Root } from 'mdast';
import { directiveToMarkdown } from 'mdast-util-directive';
import remarkGfm from 'remark-gfm';
import { attachSyntax, type Draft } from 'remark-retare';
import remarkStringify, { type Options } from 'remark-stringify';
import { type Processor, unified } from 'unified';
import { EXIT, visit } from 'unist-util-visit';

/** A drafted block as Markdown, with the bullets and emphasis marks that its author uses in the native one; no line end after it. */
export function printBlock({ node, native }: Draft, source: string): string {
  const options: Options = {
    bullet: markOf(native, 'listItem', source, ['-', '*', '+'] as const) ?? '-',
    emphasis: markOf(native, 'emphasis', source, ['*', '_'] as const) ?? '*',
    strong: markOf(native, 'strong', source, ['*', '_'] as const) ?? '*',
    bulletOrdered: numberMark(native, source),
    listItemIndent: 'one',
  };
  const printer = unified()
    .use(remarkGfm)
    .use(function (this: Processor) {
      attachSyntax(this);
      attachQuotes(this);
    })
    .use(remarkStringify, options);
  const root: Root = { type: 'root', children: [node] };
  return printer.stringify(root).trimEnd();
}

/** `{kitchen=uk}` as authors write it; quotes only where a value needs them. */
function attachQuotes(processor: Processor): void {
  const data = processor.data() as { toMarkdownExtensions?: unknown[] };
  const { handlers } = directiveToMarkdown({ preferUnquoted: true });
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), { handlers }];
}

/** `1.` or `1)` */
function numberMark(tree: Nodes, source: string): '.' | ')' {
  let mark: '.' | ')' = '.';
  visit(tree, 'list', (node: List) => {
    if (!node.ordered) return undefined;
    const start = node.position?.start.offset ?? 0;
    mark = /^\d{1,9}\)/.test(source.slice(start, start + 10)) ? ')' : '.';
    return EXIT;
  });
  return mark;
}

/** The mark with which the first node of a kind begins in the file. */
function markOf<Mark extends string>(
  tree: Nodes,
  type: string,
  source: string,
  marks: readonly Mark[],
): Mark | undefined {
  let found: Mark | undefined;
  visit(tree, type, (node) => {
    const first = source[node.position?.start.offset ?? -1];
    found = marks.find((mark) => mark === first);
    return found === undefined ? undefined : EXIT;
  });
  return found;
}
