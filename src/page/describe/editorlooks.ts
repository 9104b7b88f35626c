import { HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { EditorView } from '@codemirror/view';
import { tags } from '@lezer/highlight';

const theme = EditorView.theme({
  '&': {
    color: 'var(--ink)',
    backgroundColor: 'var(--card)',
    border: '1px solid var(--line)',
    fontSize: '0.95rem',
    blockSize: 'clamp(18rem, 62vh, 46rem)',
  },
  '&.cm-focused': { outline: '3px solid var(--focus)', outlineOffset: '2px' },
  '.cm-scroller': { fontFamily: 'ui-monospace, "Liberation Mono", Menlo, Consolas, monospace' },
  '.cm-content': { caretColor: 'var(--ink)', paddingBlock: '0.6rem' },
  '.cm-cursor': { borderLeftColor: 'var(--ink)', borderLeftWidth: '2px' },
  '.cm-gutters': {
    color: 'var(--quiet)',
    backgroundColor: 'transparent',
    borderInlineEnd: '1px solid var(--line)',
  },
  '.cm-activeLine, .cm-activeLineGutter': {
    backgroundColor: 'color-mix(in srgb, var(--ink) 5%, transparent)',
  },
  '&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground':
    { background: 'color-mix(in srgb, var(--focus) 25%, transparent)' },
  '&.cm-focused .cm-matchingBracket': {
    backgroundColor: 'transparent',
    outline: '1px solid var(--quiet)',
  },
  '.cm-tooltip': {
    color: 'var(--ink)',
    backgroundColor: 'var(--card)',
    border: '1px solid var(--ink)',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': { fontFamily: 'var(--hands)', maxHeight: '16rem' },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li': {
    display: 'flex',
    alignItems: 'center',
    minHeight: '44px',
    padding: '0.2rem 0.75rem',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]': {
    color: 'var(--paper)',
    backgroundColor: 'var(--ink)',
  },
  '.cm-diagnostic': { borderLeft: '4px double var(--ink)', padding: '0.4rem 0.75rem' },
  '.cm-diagnostic-warning': { borderLeft: '4px solid var(--line)' },
  '.cm-lint-marker': { content: 'normal', textAlign: 'center' },
  '.cm-lint-marker-error::before': { content: '"■"', color: 'var(--load)' },
  '.cm-lint-marker-warning::before': { content: '"□"', color: 'var(--quiet)' },
  '.cm-lintRange': { backgroundImage: 'none', paddingBottom: '0' },
  '.cm-lintRange-error': { textDecoration: 'underline wavy var(--load) 1.5px' },
  '.cm-lintRange-warning': { textDecoration: 'underline dashed var(--quiet) 1.5px' },
});

// Weight and slope before colour: keys stand out, comments stand back.
const highlighting = HighlightStyle.define([
  { tag: tags.definition(tags.propertyName), fontWeight: '700' },
  { tag: tags.comment, color: 'var(--quiet)', fontStyle: 'italic' },
  {
    tag: [tags.punctuation, tags.separator, tags.squareBracket, tags.brace],
    color: 'var(--quiet)',
  },
]);

/** How the text looks: ink on a card, by the page's own variables, light and dark. */
export const looksOfText = [theme, syntaxHighlighting(highlighting)];
