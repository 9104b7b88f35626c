export { comeBack, errand, send } from './errand.ts';
export { type Room, room, ROOMS } from './rooms.ts';
export { roomNames } from './words.ts';
