import { trains } from 'virtual:our-trains';
import type { Language } from '../../telling/narrative/index.ts';
import { SPANISH } from './spanish.ts';

/** What a train is about, in a language where it is one of ours; else as its file has it. */
export function aboutIn(about: string, language: Language): string {
  if (language !== 'es') return about;
  const ours = trains.find((one) => one.about === about);
  return (ours && SPANISH[ours.file]) ?? about;
}
