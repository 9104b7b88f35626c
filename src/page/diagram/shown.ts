import { endsOf, type Shown, type Standings, standingsOf } from '../../telling/scene/index.ts';
import { accountsOf, type Build } from '../study/index.ts';
import { words } from './words.ts';

/** What of a build's answer the diagram shows. */
export function shownOf(build: Build): Shown | undefined {
  const [train, answer] = [build.train.value, build.answer.value];
  if (!train || !answer) return undefined;
  const { speeds, devices, working } = answer;
  const ends = endsOf(train);
  return {
    ends,
    speeds,
    ledger: accountsOf(train, answer),
    devices,
    branches: working?.branches,
    circling: working?.circling,
  };
}

/** The standings in the reader's words; the torque numbers are for 100 N·m put in. */
export function standingsFor(build: Build, shown: Shown | undefined): Standings | undefined {
  const say = words();
  const assembly = build.assembly.value;
  if (!assembly || !shown) return undefined;
  return standingsOf(assembly, shown, say);
}
