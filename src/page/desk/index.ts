export { Desk } from './desk.tsx';
export { download } from './disk.ts';
export { FileDesk } from './filedesk.ts';
export { Notice } from './notice.tsx';
export { workOffline } from './offline.ts';
