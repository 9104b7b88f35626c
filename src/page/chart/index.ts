export { Chart } from './chart.tsx';
