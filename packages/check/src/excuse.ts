import { oneOf } from '@retare/core';
import { type RuleName, ruleNames, type Settings } from '@retare/larder';
import type { Nodes, Parents, Root } from 'mdast';
import type { Position } from 'unist';
import { visitParents } from 'unist-util-visit-parents';
import type { Finding } from './finding.js';
import { told } from './rules-of-the-text.js';

/** What an author excuses: findings of some rules in one stretch of the file. */
interface Excuse {
  rules: ReadonlySet<string>;
  scope: Position | undefined;
}

/**
 * Leaves out what an author excuses in a comment, `<!-- retare ignore unbuyable: the fishmonger cuts it -->`, for the next line or block,
 * or for the line that the comment stands in. A comment that gives no reason or names no rule excuses nothing, and is a finding itself.
 */
export function excused(findings: readonly Finding[], tree: Root, source: string, settings: Settings): Finding[] {
  const excuses: Excuse[] = [];
  const slips: Finding[] = [];
  visitParents(tree, ['html', 'paragraph'], (node, ancestors) => {
    const comment = commentIn(node as Nodes, source);
    if (comment === null) return;
    const { rules, fault } = readComment(comment);
    if (fault === null) excuses.push({ rules, scope: scopeOf(node as Nodes, ancestors as Parents[]) });
    else slips.push(...told('annotation', 'error', settings, { ...fault, place: node.position }));
  });
  const isExcused = ({ rule, place }: Finding): boolean =>
    excuses.some(
      ({ rules, scope }) => rules.has(rule) && place !== undefined && scope !== undefined && holds(scope, place),
    );
  return [...findings.filter((finding) => !isExcused(finding)), ...slips];
}

function holds(scope: Position, place: Position): boolean {
  const at = place.start.offset ?? -1;
  return (scope.start.offset ?? 0) <= at && at < (scope.end.offset ?? 0);
}

/** What a comment of ours says; in MDX a comment is written between braces. */
function commentIn(node: Nodes, source: string): string | null {
  const start = node.position?.start.offset;
  const written = node.type === 'html' ? node.value.trim() : source.slice(start, node.position?.end.offset).trim();
  const [opens, closes] = node.type === 'html' ? ['<!--', '-->'] : ['{/*', '*/}'];
  if (start === undefined || !written.startsWith(opens) || !written.endsWith(closes)) return null;
  const inside = written.slice(opens.length, -closes.length).trim();
  return /^retare(?:\s|$)/.test(inside) ? inside : null;
}

const example = '<!-- retare ignore unbuyable: why it is meant -->';

function readComment(comment: string): {
  rules: Set<string>;
  fault: Pick<Finding, 'text' | 'actual' | 'expected'> | null;
} {
  const colon = comment.indexOf(':');
  const [, verb = '', ...rules] = (colon < 0 ? comment : comment.slice(0, colon)).split(/[\s,]+/).filter(Boolean);
  const reason = colon < 0 ? '' : comment.slice(colon + 1).trim();
  const unknown = rules.find((rule) => !ruleNames.includes(rule as RuleName));
  const fault = (because: string, write: string, expected: string[]) => ({
    rules: new Set<string>(),
    fault: { text: `${because}, so it excuses nothing. ${write}`, actual: comment, expected },
  });
  if (verb !== 'ignore' || rules.length === 0)
    return fault('This comment names no rule to ignore', `Write it like \`${example}\``, [example]);
  if (unknown !== undefined)
    return fault(`This comment names \`${unknown}\`, which is no rule`, `Use ${oneOf(ruleNames)}`, [...ruleNames]);
  if (reason === '') return fault('This comment gives no reason', `Write it like \`${example}\``, [example]);
  return { rules: new Set(rules), fault: null };
}

/** The next line or block; for a comment among a line's words, that line. */
function scopeOf(node: Nodes, ancestors: readonly Parents[]): Position | undefined {
  const line = ancestors.find((parent) => parent.type === 'paragraph' || parent.type === 'heading');
  if (line !== undefined) return line.position;
  let child: Nodes = node;
  for (const parent of ancestors.toReversed()) {
    const next = parent.children[(parent.children as Nodes[]).indexOf(child) + 1];
    if (next !== undefined) return next.type === 'list' ? next.children[0]?.position : next.position;
    child = parent;
  }
  return undefined;
}
