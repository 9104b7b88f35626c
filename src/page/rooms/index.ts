export { room, ROOMS } from './rooms.ts';
