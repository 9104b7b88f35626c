export { HandsFree, handsFree } from './handsfree.tsx';
export { useWord, WordButton } from './wordbutton.tsx';
