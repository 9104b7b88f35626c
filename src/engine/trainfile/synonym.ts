// Shop and regional words, each with the word of the train file.
const OURS: ReadonlyMap<string, string> = new Map([
  ['sun gear', 'sun'],
  ['centre gear', 'sun'],
  ['center gear', 'sun'],
  ['ring gear', 'ring'],
  ['ring wheel', 'ring'],
  ['annulus', 'ring'],
  ['annular', 'ring'],
  ['internal gear', 'ring'],
  ['satellites', 'planets'],
  ['planet pinions', 'planets'],
  ['pinions', 'planets'],
  ['satellite', 'planet'],
  ['planet pinion', 'planet'],
  ['pinion', 'planet'],
  ['planet carrier', 'carrier'],
  ['arm', 'carrier'],
  ['spider', 'carrier'],
  ['cage', 'carrier'],
  ['multi-plate clutch', 'clutch'],
  ['clutch pack', 'clutch'],
  ['disc clutch', 'clutch'],
  ['lamellar clutch', 'clutch'],
  ['multi-plate brake', 'brake'],
  ['brake clutch', 'brake'],
  ['holding clutch', 'brake'],
  ['grounded clutch', 'brake'],
  ['brake band', 'band'],
  ['one-way clutch', 'one-way'],
  ['freewheel', 'one-way'],
  ['overrunning clutch', 'one-way'],
  ['sprag', 'one-way'],
  ['roller clutch', 'one-way'],
  ['mechanical diode', 'one-way'],
]);

/** The train file's word for a key or a part of a set; a word that has none is its own. */
export function ourWord(word: string): string {
  return OURS.get(word) ?? word;
}
