import type { Study } from '../study/index.ts';
import { language } from '../words/index.ts';
import { aboutIn } from './told.ts';
import { words } from './words.ts';
import './begin.css';

/** What the file says that its train is about, on asking; nothing where it says nothing. */
export function About({ study }: { readonly study: Study }) {
  const about = study.file.train.value?.about;
  if (!about) return null;
  return (
    <details class="begin-about">
      <summary>{words().about}</summary>
      <p>{aboutIn(about, language.value)}</p>
    </details>
  );
}
