/** What a train and its things are called in another language than its file's. */
export interface NamesIn {
  /** Of the train. */
  readonly name?: string;
  readonly about?: string;
  /** Of its things, by the file's own names: of a set, or of one member of it ("front.ring"). */
  readonly names?: ReadonlyMap<string, string>;
}
