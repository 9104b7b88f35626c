import {
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
  type Completion,
  type CompletionContext,
  completionKeymap,
  type CompletionResult,
  snippet,
  startCompletion,
} from '@codemirror/autocomplete';
import {
  defaultKeymap,
  indentLess,
  indentMore,
  insertNewlineAndIndent,
} from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { bracketMatching } from '@codemirror/language';
import { lintGutter, setDiagnostics } from '@codemirror/lint';
import { Annotation, EditorState, Prec } from '@codemirror/state';
import {
  drawSelection,
  EditorView,
  highlightActiveLine,
  keymap,
  lineNumbers,
  type ViewUpdate,
} from '@codemirror/view';
import type { Train } from '../../../engine/train/index.ts';
import { offersAt, type Place, readTrain } from '../../../engine/trainfile/index.ts';
import type { Bench } from '../bench/index.ts';
import { looksOfText } from './editorlooks.ts';

/** Something to be told about a place of the text. */
export interface Mark {
  readonly severity: 'error' | 'warning';
  readonly place: Place;
  readonly text: string;
}

type TrainFile = Bench['file'];

// A change that came from elsewhere is not written back.
const fromFile = Annotation.define<boolean>();

/**
 * The text of the file in an editor. What is typed goes to the file at once, a run of typing as
 * one step of undo; what else changes the file is shown, with the caret kept in place.
 */
export class Editor {
  private readonly view: EditorView;
  private readonly file: TrainFile;
  private typing = false;
  /** How the file's lines end, where all end alike; within the editor they end in \n. */
  private end: '\n' | '\r\n' = '\n';

  constructor(parent: HTMLElement, file: TrainFile, label: string) {
    this.file = file;
    this.view = new EditorView({ parent, state: this.stateOf(label) });
    this.show(file.text.peek());
  }

  /** Shows a text of the file; only what differs is changed. */
  show(whole: string): void {
    const isDos = whole.includes('\n') && !/(?:^|[^\r])\n/u.test(whole);
    this.end = isDos ? '\r\n' : '\n';
    const text = isDos ? whole.replaceAll('\r\n', '\n') : whole;
    const before = this.view.state.sliceDoc();
    if (before === text) return;
    this.typing = false;
    let from = 0;
    const least = Math.min(before.length, text.length);
    while (from < least && before[from] === text[from]) from++;
    let back = 0;
    while (back < least - from && before.at(-1 - back) === text.at(-1 - back)) back++;
    const insert = text.slice(from, text.length - back);
    this.view.dispatch({
      changes: { from, to: before.length - back, insert: this.view.state.toText(insert) },
      annotations: fromFile.of(true),
    });
  }

  mark(marks: readonly Mark[]): void {
    const { doc } = this.view.state;
    const found = marks.map(({ severity, place, text: message }) => {
      const line = doc.line(Math.min(place.line, doc.lines));
      const from = Math.min(line.from + place.column - 1, line.to);
      return { from, to: Math.min(from + place.length, line.to), severity, message };
    });
    this.view.dispatch(setDiagnostics(this.view.state, found));
  }

  goTo(lineNumber: number, column: number): void {
    const { doc } = this.view.state;
    const line = doc.line(Math.min(lineNumber, doc.lines));
    const anchor = Math.min(line.from + column - 1, line.to);
    const effects = EditorView.scrollIntoView(anchor, { y: 'center' });
    this.view.dispatch({ selection: { anchor }, effects });
    this.view.focus();
  }

  /** Opens the list of what can come next. */
  offer(): void {
    this.view.focus();
    startCompletion(this.view);
  }

  close(): void {
    this.view.destroy();
  }

  private stateOf(label: string): EditorState {
    const undo = (does: 'undo' | 'redo') => () => {
      this.file[does]();
      return true;
    };
    return EditorState.create({
      extensions: [
        // Every byte of the file stays: a line ends at its line feed and nowhere else.
        EditorState.lineSeparator.of('\n'),
        Prec.high(
          keymap.of([
            { key: 'Mod-z', run: undo('undo') },
            { key: 'Mod-y', run: undo('redo') },
            { key: 'Mod-Shift-z', run: undo('redo') },
          ]),
        ),
        lineNumbers(),
        lintGutter(),
        drawSelection(),
        highlightActiveLine(),
        bracketMatching(),
        closeBrackets(),
        yaml(),
        autocompletion({ override: [completing(() => this.known())], icons: false }),
        keymap.of([
          ...closeBracketsKeymap,
          ...completionKeymap,
          { key: 'Enter', run: insertNewlineAndIndent },
          { key: 'Tab', run: indentMore, shift: indentLess },
          ...defaultKeymap,
        ]),
        EditorView.contentAttributes.of({
          'aria-label': label,
          spellcheck: 'false',
          tabindex: '0',
        }),
        EditorView.clipboardInputFilter.of((text) => text.replace(/\r\n?/gu, '\n')),
        EditorView.updateListener.of((update) => this.heard(update)),
        // On a narrow screen a line that runs out of sight is worse than one that breaks.
        matchMedia('(width < 48rem)').matches ? EditorView.lineWrapping : [],
        looksOfText,
      ],
    });
  }

  private heard(update: ViewUpdate): void {
    if (!update.docChanged) return;
    if (update.transactions.some((one) => one.annotation(fromFile))) return;
    const isTyping = update.transactions.every(
      (one) => one.isUserEvent('input.type') || one.isUserEvent('delete.backward'),
    );
    // A new line begins a new step.
    const isLine = update.state.doc.lines !== update.startState.doc.lines;
    const text = update.state.sliceDoc();
    const whole = this.end === '\n' ? text : text.replaceAll('\n', this.end);
    this.file.write(whole, isTyping && this.typing && !isLine);
    this.typing = isTyping && !isLine;
  }

  private known(): Train | undefined {
    return readTrain(this.file.text.peek()).soFar ?? this.file.train.peek();
  }
}

function completing(known: () => Train | undefined) {
  return ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const train = known() ?? NOTHING;
    const found = offersAt(state.sliceDoc(), pos, train);
    if (!found || (!explicit && found.from === pos && !isInvited(state, pos))) return null;
    // In the order of the file's form, and of the train.
    const options = found.offers.map(({ label, put, what }, i) => ({
      label,
      type: what,
      boost: -Math.min(i, 99),
      apply: applying(put),
    }));
    return { from: found.from, options, validFor: /^[^,:#[\]{}\n]*$/u };
  };
}

// Where more is to be typed, what can come there is offered at once.
function applying(put: string): NonNullable<Completion['apply']> {
  if (!put.includes('\0')) return put;
  const apply = snippet(asSnippet(put));
  return (view, completion, from, to) => {
    apply(view, completion, from, to);
    startCompletion(view);
  };
}

// Right after a colon, a bracket or a comma a list is welcome; on a bare line it is not.
function isInvited(state: EditorState, pos: number): boolean {
  return /[:[{,]\s?$/u.test(state.doc.lineAt(pos).text.slice(0, pos - state.doc.lineAt(pos).from));
}

// The places to type on are numbered, so that Tab goes on to the next, and last to the end.
function asSnippet(put: string): string {
  let place = 0;
  const whole = put.endsWith('\0') ? put : `${put}\0`;
  return whole.replace(/[$\\]/gu, '\\$&').replaceAll('\0', () => `\${${++place}}`);
}

const NOTHING: Train = {
  name: '',
  about: '',
  input: '',
  output: '',
  sets: [],
  pairs: [],
  joins: [],
  devices: [],
  ranges: [],
};
