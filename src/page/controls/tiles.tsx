import type { ComponentChildren } from 'preact';
import './controls.css';

/** Large buttons side by side, of which one or several are chosen. */
export function Tiles({ children }: { readonly children: ComponentChildren }) {
  return <div class="tiles">{children}</div>;
}
