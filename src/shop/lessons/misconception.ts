/**
 * Wrong ideas that learners bring, each the reason for a wrong choice. Common practice of those
 * who teach the trade, no source; what each leads to on a train is reckoned, not remembered.
 */
export const MISCONCEPTIONS = [
  'upside down', // output over input
  'sign dropped', // a held carrier's minus is lost
  'mesh reverses', // "gears in mesh turn opposite ways, so the output turns back"
  'other member held', // 1 + R/S where 1 + S/R is right, and the other way round
  'carrier turns', // 1 + R/S where the carrier is held and R/S is right
  'one forgotten', // R/S where 1 + R/S is right
  'one formula for all', // 1 + R/S whatever drives, is held and is driven
  'pairs taken for plain', // 1 + R/S where planets are meshed pairs and 1 - R/S is right
  'planets counted in', // the teeth of a plain set's planets added
  'ratios multiplied', // two sets that share members taken one after the other
  'direct', // "a clutch that is on makes it direct"
  'gears always change', // a set that turns as one is said to reduce
  'one-way turned round', // the free sense taken for the holding one
  'turning means holding', // what can turn is said to hold, and what locks to turn
  'path unseen', // nothing is seen to lead from the input to the output
  'holding stops all', // "one member is held, so nothing turns"
  'nothing settles it', // "no device holds that one, so it may do what it likes"
  'always settled', // an invented speed for what is free
  'one-way never holds', // "nobody applies it, so it does nothing"
  'one-way always holds', // "it is a holding device, so it holds"
  'over-running unseen', // idle, where the races turn at different speeds
  'applied means carrying',
  'released by sharing', // "another device does it already"
  'friction slips one way', // a clutch or brake taken for a one-way clutch
  'applied means driving',
  'more devices tie up',
  'neutral means still',
  'braking always',
  'one-way ends braking', // "there is a one-way clutch in it, so no engine braking"
  'still means no torque',
  'reaction is the input', // equal to what comes in
  'reaction is the output', // equal to what goes out
  'reaction added up', // the sum where the difference is right, and the other way round
  'reaction turned round',
  'fits either way', // "a one-way clutch is the same from both sides"
  'cover unseen', // "it is in sight, so it comes off"
  'far end first', // "one may begin anywhere"
  'wrong way round',
  'any way round', // "it fits both ways, so it does not matter"
  'fault means no drive',
  'fault ties up',
  'fault shows wherever fitted', // "it shows in the first gear that uses the device"
  'fault hides', // "another device does the work, so nothing shows"
] as const;
/** The wrong idea that a wrong choice comes from. */
export type Misconception = (typeof MISCONCEPTIONS)[number];
