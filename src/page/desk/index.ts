export { Desk, startNew } from './desk.tsx';
export { download, type Kinds, pick, type Picked, readText, saveAs } from './disk.ts';
export { deskOf, FileDesk } from './filedesk.ts';
export { Notice } from './notice.tsx';
export { experienceUsed, ownExperience, useExperience } from './experience.ts';
export { ourTrains } from './ours.ts';
export { hearInstall, install, workOffline } from './offline.ts';
