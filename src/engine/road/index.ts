export * from './road.ts';
