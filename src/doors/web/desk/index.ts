export { Desk } from './desk.tsx';
export { FIRST, ourTrains, readOurs } from './ours.ts';
