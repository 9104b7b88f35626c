export { discard, goingWith, pathOf, type Thing } from './discard.ts';
export { type Measurand, putLimit, putShelf, type ShelfSaid } from './measured.ts';
export { namesFor, type Offer, type Offers, offersAt } from './offer.ts';
export { readTrain, type Reading } from './reading.ts';
export { rename, type Renaming } from './rename.ts';
export { trainText } from './write.ts';
