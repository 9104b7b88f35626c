import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';
import './begin.css';

/** What the file says that its train is about, on asking; nothing where it says nothing. */
export function About({ study }: { readonly study: Study }) {
  const train = study.file.train.value;
  if (!train?.about) return null;
  return (
    <details class="begin-about">
      <summary>{words().about}</summary>
      <p>{voiceNow().about(train)}</p>
    </details>
  );
}
