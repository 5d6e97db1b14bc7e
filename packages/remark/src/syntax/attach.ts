import { directiveFromMarkdown, directiveToMarkdown } from 'mdast-util-directive';
import type { Processor } from 'unified';
import { gatedDirective } from './gated-directive.js';
import { annotationNames } from './names.js';

interface SyntaxData {
  micromarkExtensions?: unknown[];
  fromMarkdownExtensions?: unknown[];
  toMarkdownExtensions?: unknown[];
  retareSyntax?: true;
}

const names = `(?:${annotationNames.join('|')})`;

/** Only what would be read as an annotation of ours is escaped: `Serves:four` and `:::note` are printed as they are. */
const unsafe = [
  { character: ':', before: '[^:]', after: `${names}[\\[{]`, inConstruct: 'phrasing' as const },
  { atBreak: true, before: ':+', character: ':', after: `${names}(?![\\w-])` },
];

/** Gives a processor our directives syntax, once. Beside a pipeline that has the whole of it already, ours adds nothing. */
export function attachSyntax(processor: Processor): void {
  const data = processor.data() as SyntaxData;
  if (data.retareSyntax) return;
  data.retareSyntax = true;
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gatedDirective()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), directiveFromMarkdown()];
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), { ...directiveToMarkdown(), unsafe }];
}
