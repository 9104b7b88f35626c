export { doubtOf, prove } from './prove.ts';
export { areIndependent, spansFreedom } from './rank.ts';
