import { expect, it } from 'vitest';
import { LANGUAGES, voiceOf } from '../voice/index.ts';
import { remarkText } from './packs.ts';

it('a doubted limit asks whoever reads the page for no word of a file', () => {
  for (const language of LANGUAGES) {
    const told = (way: 'file' | 'asked') => {
      return remarkText({ remark: 'limit doubted', by: 'point' }, voiceOf(language), 'mm', way);
    };
    expect(told('file')).toContain('sure: yes');
    expect(told('asked')).not.toContain('sure');
    expect(told('asked').length).toBeGreaterThan(100);
  }
});
