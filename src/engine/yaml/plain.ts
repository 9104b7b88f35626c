import {
  boolCoreTag,
  CHOMPING_MODE,
  COLLECTION_STYLE,
  type Event,
  EVENT_ID,
  floatCoreTag,
  getScalarValue,
  intCoreTag,
  NOT_RESOLVED,
  nullCoreTag,
  parseEvents,
  SCALAR_STYLE,
  type ScalarEvent,
  YAMLException,
} from 'js-yaml';
import {
  BAD_CHARACTER,
  blockPassage,
  type EntryNode,
  MOST_LEVELS,
  type Node,
  type Scalar,
  type Within,
} from './node.ts';
import type { Passage } from './place.ts';

/**
 * The tree of a text in which nothing is to be told: entries, lists and scalars. Undefined where
 * anything else stands in it, mistakes too: `composedTree` reads that in three times the time, and
 * tells what it is. What both read they read alike, to the last place.
 */
export function plainTree(text: string): Node | undefined {
  try {
    return new Plain(text).tree();
  } catch (thrown) {
    if (thrown === NOT_PLAIN || thrown instanceof YAMLException) return undefined;
    throw thrown;
  }
}

const NOT_PLAIN = Symbol('not plain');

// From the library's events, which tell where a thing begins, to nodes, which tell where it ends.
class Plain {
  private readonly text: string;
  private readonly events: readonly Event[];
  private next = 0;
  /** Where what was read last ends. */
  private end = 0;

  constructor(text: string) {
    this.text = text;
    this.events = parseEvents(text, { maxDepth: 2 * MOST_LEVELS });
  }

  tree(): Node {
    const start = this.take();
    const plain = start?.type === EVENT_ID.DOCUMENT && !start.explicitStart && !start.explicitEnd;
    if (!plain || start.directives.length > 0) throw NOT_PLAIN;
    const root = this.node(0, undefined);
    this.take();
    if (this.take() !== undefined) throw NOT_PLAIN;
    return root;
  }

  // `gap` is where the node would stand if there were one.
  private node(level: number, gap: Passage | undefined): Node {
    const event = this.take();
    switch (event?.type) {
      case EVENT_ID.SCALAR:
        if (!isNothing(bare(event))) return this.scalar(event, this.valueOf(event));
        if (!gap) throw NOT_PLAIN;
        return { kind: 'scalar', value: null, at: gap };
      case EVENT_ID.SEQUENCE:
      case EVENT_ID.MAPPING: {
        if (level >= MOST_LEVELS) throw NOT_PLAIN;
        const flow = event.style === COLLECTION_STYLE.FLOW;
        // A pair in a list may go without braces.
        const { start } = bare(event);
        if (flow && !'[{'.includes(this.text[start] ?? ' ')) throw NOT_PLAIN;
        this.end = start + (flow ? 1 : 0);
        const within = event.type === EVENT_ID.SEQUENCE ? this.items(level) : this.entries(level);
        if (flow) this.end = this.past(CLOSING);
        const at = { from: start, to: this.end };
        return { ...within, flow, at: flow ? at : blockPassage(within, at) };
      }
      default:
        throw NOT_PLAIN;
    }
  }

  private items(level: number): Within {
    const items: Node[] = [];
    while (!this.popped()) items.push(this.node(level + 1, undefined));
    return { kind: 'list', items };
  }

  private entries(level: number): Within {
    const entries = new Map<string, EntryNode>();
    while (!this.popped()) {
      const event = this.take();
      if (event?.type !== EVENT_ID.SCALAR || isNothing(event)) throw NOT_PLAIN;
      const key = getScalarValue(this.text, bare(event));
      if (key === '<<' || entries.has(key)) throw NOT_PLAIN;
      const { at: keyAt } = this.scalar(event, key);
      this.end = this.past(COLON);
      const gap = { from: keyAt.to, to: keyAt.to };
      entries.set(key, { key, keyAt, value: this.node(level + 1, gap) });
    }
    return { kind: 'section', entries: [...entries.values()] };
  }

  private scalar(event: ScalarEvent, value: Scalar['value']): Scalar {
    const at = this.passageOf(event);
    if (typeof value === 'string' && BAD_CHARACTER.test(value)) throw NOT_PLAIN;
    this.end = at.to;
    return { kind: 'scalar', value, at };
  }

  // The library tells where the text is: between its quotes, or below its mark.
  private passageOf({ style, chomping, valueStart, valueEnd }: ScalarEvent): Passage {
    switch (style) {
      case SCALAR_STYLE.PLAIN:
        return { from: valueStart, to: valueEnd };
      case SCALAR_STYLE.SINGLE_QUOTED:
      case SCALAR_STYLE.DOUBLE_QUOTED:
        return { from: valueStart - 1, to: valueEnd + 1 };
      case SCALAR_STYLE.LITERAL_BLOCK:
      case SCALAR_STYLE.FOLDED_BLOCK: {
        const all = chomping === CHOMPING_MODE.KEEP;
        const to = all ? valueEnd : this.lastLineOf(valueStart, valueEnd);
        return { from: this.past(MARK) - 1, to };
      }
    }
  }

  private valueOf(event: ScalarEvent): Scalar['value'] {
    const text = getScalarValue(this.text, event);
    if (event.style !== SCALAR_STYLE.PLAIN) return text;
    for (const { resolve, tagName } of WORDS) {
      const value = resolve(text, false, tagName);
      if (value !== NOT_RESOLVED) return value;
    }
    // A figure too long for a number is a word here, and a number there.
    if (Math.abs(Number(text)) === Infinity) throw NOT_PLAIN;
    return text;
  }

  // The library takes the empty lines below a block of text into it.
  private lastLineOf(from: number, to: number): number {
    const length = this.text.slice(from, to).trimEnd().length;
    const end = this.text.indexOf('\n', from + length);
    if (length === 0 || (end < 0 && from + length < to)) throw NOT_PLAIN;
    return end < 0 ? to : end + 1;
  }

  private take(): Event | undefined {
    return this.events[this.next++];
  }

  private popped(): boolean {
    if (this.events[this.next]?.type !== EVENT_ID.POP) return false;
    this.next += 1;
    return true;
  }

  // Behind what stands between the end of what was read last and the next thing.
  private past(mark: RegExp): number {
    mark.lastIndex = this.end;
    if (!mark.test(this.text)) throw NOT_PLAIN;
    return mark.lastIndex;
  }
}

const WORDS = [nullCoreTag, boolCoreTag, intCoreTag, floatCoreTag];
const COLON = /\s*:/y;
const MARK = /\s*[>|]/y;
const CLOSING = /(?:[\s,]|#.*)*[\]}]/y;

function isNothing({ style, valueStart, valueEnd }: ScalarEvent): boolean {
  return valueStart < 0 || (style === SCALAR_STYLE.PLAIN && valueStart === valueEnd);
}

// Without an anchor or a tag.
function bare<Kind extends Exclude<Event, { type: 1 | 5 | 6 }>>(event: Kind): Kind {
  if (event.anchorStart >= 0 || event.tagStart >= 0) throw NOT_PLAIN;
  return event;
}
