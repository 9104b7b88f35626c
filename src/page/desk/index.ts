export { Desk, startNew } from './desk.tsx';
export { download, type Kinds, pick, type Picked, saveAs } from './disk.ts';
export { deskOf, FileDesk } from './filedesk.ts';
export { Notice } from './notice.tsx';
export { ourTrains, readExperience } from './ours.ts';
export { hearInstall, install, workOffline } from './offline.ts';
