export * from './experience.ts';
export { type ExperienceReading, readExperience } from './reading.ts';
