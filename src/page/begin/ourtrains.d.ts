declare module 'virtual:our-trains' {
  /** Our trains, the simplest first. */
  export const trains: readonly {
    /** Of its file, without its ending. */
    readonly file: string;
    readonly name: string;
    readonly about: string;
    /** The same in other languages. */
    readonly languages: Readonly<
      Record<string, { readonly name?: string; readonly about?: string }>
    >;
    readonly meshes: number;
    readonly devices: number;
  }[];
}
