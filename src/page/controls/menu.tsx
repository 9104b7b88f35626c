import type { ComponentChildren } from 'preact';
import './controls.css';

interface Props {
  readonly label: string;
  readonly children: ComponentChildren;
}

/** What is seldom needed, behind a word in the head of the sheet; Escape and a click away close it. */
export function Menu({ label, children }: Props) {
  return (
    <details
      class="menu"
      onKeyDown={({ key, currentTarget }) => {
        if (key !== 'Escape') return;
        currentTarget.open = false;
        currentTarget.querySelector('summary')?.focus();
      }}
      onClick={({ target, currentTarget }) => {
        if (target instanceof HTMLButtonElement) currentTarget.open = false;
      }}
      onFocusOut={({ currentTarget, relatedTarget }) => {
        if (relatedTarget instanceof Node && !currentTarget.contains(relatedTarget)) {
          currentTarget.open = false;
        }
      }}
    >
      <summary>{label}</summary>
      <div class="menu-list">{children}</div>
    </details>
  );
}
