import { directive } from 'micromark-extension-directive';
import type { Code, Construct, Effects, Extension, State, TokenizeContext } from 'micromark-util-types';
import { annotationNames } from './names.js';

const colon = 58;
const longestName = Math.max(...annotationNames.map((name) => name.length));

/**
 * The directives syntax, opened only by names of ours, so that `10:30` and another plugin's `:::note` are never tokenized as
 * directives by us and stay text byte for byte.
 */
export function gatedDirective(): Extension {
  const { text, flow } = directive();
  return { text: gateAll(text), flow: gateAll(flow) };
}

type ConstructRecord = Extension['text'];

function gateAll(record: ConstructRecord): NonNullable<ConstructRecord> {
  const constructs = record?.[colon];
  const list = constructs === undefined ? [] : Array.isArray(constructs) ? constructs : [constructs];
  return { [colon]: list.map(gate) };
}

function gate(construct: Construct): Construct {
  return {
    ...construct,
    tokenize(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
      const isBlock = construct.concrete === true;
      if (isBlock && (unclosed.get(this.parser) ?? 0) >= mostUnclosed) return nok;
      const done: State = (code) => {
        if (isBlock && !endsInFence(this)) unclosed.set(this.parser, (unclosed.get(this.parser) ?? 0) + 1);
        return ok(code);
      };
      const open = construct.tokenize.call(this, effects, done, nok);
      return effects.check({ partial: true, tokenize: tokenizeName }, open, nok);
    },
  };
}

/**
 * Blocks that are left open nest, and each level is read once more: a long file of them would never be done. A post has a few at most,
 * and all but the first are the first one's fault.
 */
const mostUnclosed = 8;

/** How many blocks of a document were left open so far. */
const unclosed = new WeakMap<object, number>();

/** The closing fence is the last of the block's content; an opening one has none before it. */
function endsInFence({ events }: TokenizeContext): boolean {
  return (
    events.at(-2)?.[1].type === 'directiveContainerContent' && events.at(-3)?.[1].type === 'directiveContainerFence'
  );
}

/** Colons and a name of ours, not followed by another letter. */
function tokenizeName(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
  let name = '';
  const start: State = (code) => {
    effects.enter('data');
    return colons(code);
  };
  const colons: State = (code) => {
    if (code === colon) {
      effects.consume(code);
      return colons;
    }
    return letters(code);
  };
  const letters: State = (code) => {
    if (isLetter(code) && name.length < longestName) {
      name += String.fromCharCode(code as number);
      effects.consume(code);
      return letters;
    }
    effects.exit('data');
    return annotationNames.includes(name) && !continuesName(code) ? ok(code) : nok(code);
  };
  return start;
}

function isLetter(code: Code): boolean {
  return code !== null && code >= 97 && code <= 122;
}

/** `amounts`, `oven-rack` and `pan2` are other names. */
function continuesName(code: Code): boolean {
  if (code === null || code < 0) return false;
  return /[\p{L}\p{N}_-]/u.test(String.fromCodePoint(code));
}
