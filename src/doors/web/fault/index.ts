export { FaultBeside } from './fault.tsx';
