export { asInFile, type NameOf } from './nameof.ts';
export type { DeviceStanding, MemberStanding, Standings } from './standing.ts';
export type { Group, Mark, Path, Scene, Standing, SceneSubject, Words } from './scene.ts';
export { endsOf, type Shown, standingsOf, type StandingWords } from './standingsof.ts';
export { LOOKS } from './looks.ts';
export { placement, round, toSvg } from './svg.ts';
export { LINE, linesOf, SIZE, widthOf } from './lettering.ts';
export { hatched, turnArrow, WIDE } from './symbol.ts';
export * as symbol from './symbol.ts';
