import { useState } from 'preact/hooks';
import { NumberPad } from '../controls/index.ts';
import { words } from './words.ts';

interface Props {
  readonly onCounted: (its: { readonly frictions: number; readonly steels: number }) => void;
}

/** Plates that are not as many as the file says: one number after the other. */
export function Counting({ onCounted }: Props) {
  const say = words();
  const [frictions, count] = useState<number | undefined>(undefined);
  const kind = frictions === undefined ? 'frictions' : 'steels';
  return (
    <div class="strip-counting">
      <p id="strip-count">{say.asks[kind]()}</p>
      <NumberPad
        key={kind}
        labelledBy="strip-count"
        most={100}
        none={say.noPlates}
        onNumber={(its) => {
          if (frictions === undefined) count(its ?? 0);
          else onCounted({ frictions, steels: its ?? 0 });
        }}
      />
    </div>
  );
}
