export { Symptoms } from './symptoms.tsx';
