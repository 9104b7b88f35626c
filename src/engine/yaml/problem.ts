import type { GeometryFinding } from '../teeth/index.ts';
import type { Departure, Device, FileLimit } from '../train/index.ts';
import type { Expected } from './expected.ts';
import type { Place } from './place.ts';

/** Something to be told about a file, as plain data; the narrative room has the words. */
export type Problem = Located<FileMistake | Oddity | GeometryFinding>;

/** A finding with its place. With an error there is no train; with a warning there is. */
export type Located<Finding> = Finding & {
  readonly severity: 'error' | 'warning';
  readonly place: Place;
};

/** What makes a text no train file. `near` is the name that was most likely meant. */
export type FileMistake =
  /** Characters in the text, and the most that are read. */
  | { readonly problem: 'too large'; readonly characters: number; readonly most: number }
  /** A character that cannot stand in a train file, as a number; U+FFFD tells of lost ones. */
  | { readonly problem: 'bad character'; readonly code: number }
  | { readonly problem: 'syntax'; readonly what: Syntax }
  /** A line that git writes where two copies of a file would not go together. */
  | { readonly problem: 'merge mark' }
  | { readonly problem: 'several documents' }
  /** YAML that says things twice, in place of plain text. */
  | {
      readonly problem: 'refused';
      readonly what: 'anchor' | 'alias' | 'tag' | 'merge key' | 'directive';
    }
  | { readonly problem: 'too deep'; readonly most: number }
  | { readonly problem: 'duplicate key'; readonly key: string }
  | { readonly problem: 'unknown key'; readonly key: string; readonly near?: string }
  /** A key that is known, but not beside `beside`. */
  | { readonly problem: 'misplaced key'; readonly key: string; readonly beside: string }
  /** One of the keys must stand here. */
  | { readonly problem: 'missing key'; readonly keys: readonly string[] }
  /** Something else was expected; `found` is what stands there, cut short, '' for nothing. */
  | { readonly problem: 'expected'; readonly what: Expected; readonly found: string }
  /** The same, where a thing with these keys was expected. */
  | { readonly problem: 'expected keys'; readonly keys: readonly string[]; readonly found: string }
  | { readonly problem: 'newer version'; readonly version: number; readonly newest: number }
  | {
      readonly problem: 'too many';
      readonly what: 'members' | 'devices';
      readonly count: number;
      readonly most: number;
    }
  | { readonly problem: 'unknown set'; readonly set: string; readonly near?: string }
  | {
      readonly problem: 'unknown part';
      readonly set: string;
      readonly part: string;
      readonly near?: string;
      readonly parts: readonly string[];
    }
  | {
      readonly problem: 'unknown wheel';
      readonly set: string;
      readonly wheel: string;
      readonly near?: string;
    }
  | { readonly problem: 'unknown device'; readonly device: string; readonly near?: string }
  /** A range applies a one-way clutch, which nobody can apply. */
  | { readonly problem: 'not applied'; readonly device: string }
  /** A ring of sizes whose inner diameter is not the smaller. */
  | { readonly problem: 'inside out'; readonly outer: number; readonly inner: number }
  /** A limit whose least is more than its most. */
  | { readonly problem: 'ends reversed'; readonly least: string; readonly most: string }
  /** A limit whose ends are in millimetres and in inches. */
  | { readonly problem: 'two units'; readonly least: string; readonly most: string }
  /** A job's limit that departs far from the train file's, with the ends of both as written. */
  | {
      readonly problem: 'limit doubted';
      readonly of: string;
      readonly by: Departure;
      readonly file: FileLimit;
      readonly job: FileLimit;
    }
  /** Readings or a limit of what the train does not measure. */
  | { readonly problem: 'nothing measured'; readonly name: string; readonly near?: string }
  /** A capacity by the sizes of another kind of device. */
  | { readonly problem: 'other kind'; readonly device: string; readonly kind: Device['kind'] }
  /** Plates are given for a band or a one-way clutch. */
  | { readonly problem: 'no plates'; readonly device: string }
  /** How a band is set is given for another device. */
  | { readonly problem: 'not a band'; readonly device: string }
  /** Readings of a band of which the train does not tell how it is set. */
  | { readonly problem: 'no band'; readonly device: string; readonly near?: string }
  /** Readings of bearings whose preload the train does not tell. */
  | { readonly problem: 'no preload'; readonly bearings: string; readonly near?: string }
  /** Readings of a part that the train does not list under wear. */
  | { readonly problem: 'no wear'; readonly part: string; readonly near?: string }
  /** Readings of a shaft whose end play the train does not tell. */
  | { readonly problem: 'no end play'; readonly shaft: string; readonly near?: string }
  /** Readings of a device whose plates the train does not tell. */
  | { readonly problem: 'no pack'; readonly device: string; readonly near?: string }
  | { readonly problem: 'listed twice'; readonly name: string }
  /** Sets, gear pairs and devices have names of their own. */
  | { readonly problem: 'name taken'; readonly name: string; readonly by: NamedProblem }
  | { readonly problem: 'reserved name'; readonly name: string }
  /** What is told in another language is the name of nothing in the file. */
  | { readonly problem: 'name of nobody'; readonly name: string; readonly near?: string }
  /** Two things by one name: `other` is told so too, or stands so in the file. */
  | {
      readonly problem: 'told alike';
      readonly name: string;
      readonly said: string;
      readonly other: string;
    }
  /** A member is asked for, and the name is another thing's; a set's parts are members. */
  | { readonly problem: 'not a member'; readonly name: string; readonly is: NamedProblem }
  | { readonly problem: 'joined to itself'; readonly member: string }
  | { readonly problem: 'unknown gear pair'; readonly pair: string; readonly near?: string }
  | { readonly problem: 'case cannot turn'; readonly end: 'input' | 'output' }
  /** An output that is the input, or another output, by whatever name. */
  | {
      readonly problem: 'end taken';
      readonly member: string;
      readonly by: string;
      readonly end: 'input' | 'output';
    }
  /** Only the planets of plain, pair and stepped sets can be shared. */
  | { readonly problem: 'cannot share'; readonly set: string }
  | { readonly problem: 'shares in a circle'; readonly sets: readonly string[] }
  | {
      readonly problem: 'planets differ';
      readonly planets: number;
      readonly set: string;
      readonly there: number;
    }
  | { readonly problem: 'meshes itself'; readonly wheel: string }
  /** Two wheels on the main axis cannot mesh. */
  | { readonly problem: 'none carried'; readonly wheels: readonly [string, string] }
  /** What was seen of a test that the train does not have. */
  /** An engine speed at a road speed, with neither tyre nor a good gear to read it by. */
  | { readonly problem: 'no scale of speeds' }
  | { readonly problem: 'unknown test'; readonly test: string; readonly near?: string }
  /** A test of the train, and something that it cannot show; `can` is what it can. */
  | {
      readonly problem: 'unknown outcome';
      readonly outcome: string;
      readonly test: string;
      readonly can: readonly string[];
      readonly near?: string;
    }
  /** A part carries what the train does not have. */
  | { readonly problem: 'unknown carried'; readonly name: string; readonly near?: string }
  | { readonly problem: 'unknown teardown part'; readonly part: string; readonly near?: string }
  /** A part sets or closes what is no pack, band or shaft that the file tells of. */
  | { readonly problem: 'nothing to measure'; readonly name: string; readonly near?: string }
  /** `by`: the part that carries it already, by this or another of its names. */
  | { readonly problem: 'carried twice'; readonly name: string; readonly by: string }
  /** A part stands before its cover, or covers itself. */
  | { readonly problem: 'comes off too early'; readonly part: string; readonly cover: string }
  /** An entry of a job that was not written to its end. */
  | { readonly problem: 'half written' }
  /** An entry of a job that says something else than when it was written. */
  | { readonly problem: 'changed since' }
  /** An entry of a job strikes one that is not there. */
  | { readonly problem: 'strikes nothing'; readonly id: string }
  | OilMistake
  /** So many more were found. */
  | { readonly problem: 'and more'; readonly count: number };

/** What lets a text be a train, but is likely not what was meant. */
export type Oddity =
  /** What turns on a pin goes round with its carrier: a shaft is seldom driven by it. */
  | { readonly problem: 'planet as an end'; readonly member: string }
  /** A name that stands nowhere else and looks like one that does. */
  | { readonly problem: 'lonely name'; readonly name: string; readonly near: string }
  /** A device whose two members are one body: it can do nothing. */
  | {
      readonly problem: 'one body';
      readonly device: string;
      readonly members: readonly [string, string];
    }
  /** A word that is still read, and what it is called now. */
  | { readonly problem: 'renamed'; readonly old: string; readonly now: string }
  /** A device, a race, a wheel, a carrier or another member that no part of a teardown brings. */
  | { readonly problem: 'not carried'; readonly name: string }
  /** A part through which all the oil goes: air is put on everything before it is on. */
  | { readonly problem: 'feeds all'; readonly part: string }
  /** A part is said to close what another that goes on later sets, or whose gear it lacks. */
  | {
      readonly problem: 'closes too early';
      readonly part: string;
      readonly name: string;
      readonly later: string;
    }
  | OilMistake;

/** Of what tells the devices to apply: a name that means nothing, or a part that can do nothing. */
export interface OilMistake {
  readonly problem: 'oil';
  readonly is:
    | 'unfed line'
    | 'unknown solenoid'
    | 'unknown range'
    | 'unknown gear'
    | 'range without position'
    | 'never asked'
    | 'no chamber'
    | 'never pushed';
  readonly name: string;
  readonly near?: string;
}

export type NamedProblem = 'set' | 'gear pair' | 'device' | 'join';

/** What the YAML reader stumbled over. */
export type Syntax =
  | 'indent'
  | 'tab'
  | 'unclosed bracket'
  | 'unclosed quote'
  | 'missing comma'
  | 'missing colon'
  | 'second colon'
  | 'needs quotes'
  | 'escape'
  | 'key'
  | 'unexpected text';
