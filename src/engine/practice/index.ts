export * from './practice.ts';
export { type PracticeReading, readPractice } from './reading.ts';
