import type { ComponentChildren } from 'preact';
import './controls.css';

interface Props {
  /** What goes on: it stands out among its neighbours. */
  readonly main?: boolean;
  /** One of several things that are chosen among, and whether it is chosen. */
  readonly pressed?: boolean;
  /** Leads to what is not on the list. */
  readonly other?: boolean;
  readonly disabled?: boolean;
  /** For a screen reader, where what it shows is a sign. */
  readonly label?: string;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** What is pressed in the middle of work: large enough for a finger in a glove. */
export function LargeButton({ main, pressed, other, disabled, label, onPress, children }: Props) {
  return (
    <button
      type="button"
      class={`large${main ? ' large-main' : ''}${other ? ' large-other' : ''}`}
      aria-pressed={pressed}
      aria-label={label}
      disabled={disabled}
      onClick={onPress}
    >
      {children}
    </button>
  );
}
