export { Doubts } from './doubts.tsx';
export { Failed } from './failed.tsx';
export { Opened } from './opened.tsx';
export { Ranking } from './ranking.tsx';
export { Stops } from './stops.tsx';
export { ToldSoFar } from './toldsofar.tsx';
