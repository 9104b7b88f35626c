/** What the reader calls a thing that is drawn, by its own name. */
export type NameOf = (name: string) => string;

/** As its file calls it: "front sun" of front.sun. */
export const asInFile: NameOf = (name) => name.replace('.', ' ');
