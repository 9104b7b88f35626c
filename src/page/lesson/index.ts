export { Lesson } from './lesson.tsx';
