import { directiveFromMarkdown, directiveToMarkdown } from 'mdast-util-directive';
import type { Processor } from 'unified';
import { gatedDirective } from './gated-directive.js';

/** Gives a processor our directives syntax. Beside a pipeline that has the whole of it already, ours adds nothing. */
export function attachSyntax(processor: Processor): void {
  const data = processor.data() as Record<
    'micromarkExtensions' | 'fromMarkdownExtensions' | 'toMarkdownExtensions',
    unknown[] | undefined
  >;
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gatedDirective()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), directiveFromMarkdown()];
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), directiveToMarkdown()];
}
