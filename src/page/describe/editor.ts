import {
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
  completionKeymap,
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
import type { Place } from '../../engine/yaml/index.ts';
import type { Study } from '../study/index.ts';
import { completing, type Known } from './completing.ts';
import { looksOfText } from './editorlooks.ts';

/** Something to be told about a place of the text. */
export interface Mark {
  readonly severity: 'error' | 'warning';
  readonly place: Place;
  readonly text: string;
}

type TrainFile = Study['file'];

// A change that came from elsewhere is not written back.
const fromFile = Annotation.define<boolean>();

// The drawing, the reasons and the chart are made anew from what is typed: not for each letter.
const QUIET_MS = 120;

/**
 * The text of the file in an editor. What is typed goes to the file after a moment of quiet, and
 * before anything else is done; a run of typing is one step of undo. What else changes the file
 * is shown, with the caret kept in place.
 */
export class Editor {
  private readonly view: EditorView;
  private readonly file: TrainFile;
  /** Whether the last step of the file's undo is a run of typing that goes on. */
  private typing = false;
  /** Whether something was typed that the file has not yet. */
  private waiting = false;
  private writing = false;
  private waits: ReturnType<typeof setTimeout> | undefined;
  /** How the file's lines end, where all end alike; within the editor they end in \n. */
  private end: '\n' | '\r\n' = '\n';

  /** `known`: the train as far as it is, for what can come next. */
  constructor(parent: HTMLElement, file: TrainFile, label: string, known: Known) {
    this.file = file;
    this.view = new EditorView({ parent, state: this.stateOf(label, known) });
    this.show(file.text.peek());
  }

  /** Shows a text of the file; only what differs is changed. */
  show(whole: string): void {
    // What the editor itself writes may be behind what it shows by now.
    if (this.writing) return;
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
    this.hand();
    this.view.destroy();
  }

  private stateOf(label: string, known: Known): EditorState {
    const undo = (does: 'undo' | 'redo') => () => {
      this.hand();
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
        // A name that nobody has yet looks like one that is there: Enter takes what was chosen alone.
        autocompletion({ override: [completing(known)], icons: false, selectOnOpen: false }),
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
        EditorView.domEventHandlers({
          blur: () => this.hand(),
          // Whoever hears a key of the whole sheet, as that of saving, finds all in the file.
          keydown: (event) => void ((event.ctrlKey || event.metaKey) && this.hand()),
        }),
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
    if (isTyping && !isLine) {
      clearTimeout(this.waits);
      this.waits = setTimeout(() => this.hand(), QUIET_MS);
      this.waiting = true;
      return;
    }
    this.hand(update.startState);
    this.write(update.state, false);
    this.typing = false;
  }

  // What was typed since goes to the file, in one step with what was typed before it.
  private hand(state = this.view.state): void {
    if (!this.waiting) return;
    clearTimeout(this.waits);
    this.waiting = false;
    this.write(state, this.typing);
    this.typing = true;
  }

  private write(state: EditorState, joins: boolean): void {
    const text = state.sliceDoc();
    this.writing = true;
    this.file.write(this.end === '\n' ? text : text.replaceAll('\n', this.end), joins);
    this.writing = false;
  }
}
