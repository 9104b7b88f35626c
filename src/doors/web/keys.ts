import type { Study } from '../../page/study/index.ts';
import type { FileDesk } from '../../page/desk/index.ts';

/** The keys of the whole sheet: undo, redo and save, but where a text field has its own. */
export function hearKeys(study: Study, desk: FileDesk): void {
  document.addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key === 's') void desk.save();
    else if (isTyping(event.target)) return;
    else if (key === 'z' && !event.shiftKey) study.file.undo();
    else if (key === 'y' || key === 'z') study.file.redo();
    else return;
    event.preventDefault();
  });
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea'))
  );
}
