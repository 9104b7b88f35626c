import type { Arguments, MessageId } from '../../telling/narrative/index.ts';

/** The command is used wrongly: one line that says what to type instead, and exit code 2. */
export class Misuse extends Error {
  readonly id: MessageId;
  readonly values: Arguments;

  constructor(id: MessageId, values: Arguments = {}) {
    super(id);
    this.id = id;
    this.values = values;
  }
}
