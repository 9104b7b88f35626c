export { type HalfSection, halfSection } from './halfsection.ts';
export { paintHalfSection } from './painthalfsection.ts';
