declare module 'virtual:first-train' {
  /** The file of the train that a new screen shows. */
  export const text: string;
  /** It, read when the screen was built. */
  // An ambient module cannot import by a relative path.
  // oxlint-disable-next-line typescript/consistent-type-imports
  export const train: import('../../engine/train/index.ts').Train;
  /** Its stick diagram. */
  // oxlint-disable-next-line typescript/consistent-type-imports
  export const drawn: import('../../telling/stickdiagram/index.ts').StickDiagram;
}
