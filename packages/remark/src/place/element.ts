import type { BlockContent, DefinitionContent, PhrasingContent, RootContent } from 'mdast';
import type { ContainerDirective, TextDirective } from 'mdast-util-directive';
import type {} from 'mdast-util-to-hast';

type Properties = Readonly<Record<string, string | string[] | boolean | undefined>>;

/**
 * An element around blocks. It is a directive node with an element's name, which remark-rehype turns into the element, MDX passes on
 * and remark-stringify can write.
 */
export function blockElement(
  tag: string,
  properties: Properties,
  children: readonly RootContent[],
): ContainerDirective {
  const given = withoutUndefined(properties);
  return {
    type: 'containerDirective',
    name: 'retare',
    children: [...children] as (BlockContent | DefinitionContent)[],
    data: { hName: tag, hProperties: given },
  };
}

/** An element around words. */
export function inlineElement(
  tag: string,
  properties: Properties,
  children: readonly PhrasingContent[],
): TextDirective {
  return {
    type: 'textDirective',
    name: 'retare',
    children: [...children],
    data: { hName: tag, hProperties: withoutUndefined(properties) },
  };
}

/** A block element that holds words, such as `p` or `summary`. */
export function wordsElement(tag: string, properties: Properties, children: readonly PhrasingContent[]): RootContent {
  return {
    type: 'paragraph',
    children: [...children],
    data: { hName: tag, hProperties: withoutUndefined(properties) },
  };
}

/** Plain words. */
export function words(value: string): PhrasingContent {
  return { type: 'text', value };
}

function withoutUndefined(properties: Properties): Record<string, string | string[] | boolean> {
  return Object.fromEntries(
    Object.entries(properties).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}
