export { anotherText, noneText, topicText, wrongText } from './rounds.ts';
export { isWorded, labelOf, optionText, questionOf, valueWord } from './wording.ts';
