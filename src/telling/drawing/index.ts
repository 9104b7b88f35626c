export { type HalfSection, halfSection } from './halfsection.ts';
export { paintHalfSection } from './painthalfsection.ts';
export type { DeviceStanding, MemberStanding, Standings } from './standing.ts';
export type { Group, Mark, Path, Scene, Standing, Subject, Words } from './scene.ts';
export { type Shown, standingsOf, type StandingWords } from './standingsof.ts';
export { LOOKS } from './looks.ts';
export { placement, round, toSvg } from './svg.ts';
export { type EndNote, type EndView, endView, placeWheels } from './endview.ts';
export { endScene } from './endscene.ts';
