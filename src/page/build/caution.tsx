/** What can hurt, before it is done. */
export function Caution({ text }: { readonly text: string }) {
  return (
    <p class="build-caution">
      <b aria-hidden="true">⚠</b> {text}
    </p>
  );
}
