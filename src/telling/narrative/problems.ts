import type { Warning } from '../../engine/check/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import type { FigureWarning } from '../../shop/figures/index.ts';
import { oneCauseText } from './cause.ts';
import { limitDoubtedText } from './packs.ts';
import { alternatives, teethText } from './teeth.ts';
import { keyOf, visible, type Voice, voiceOf } from '../voice/index.ts';

/** Whatever is told of a train file. */
export type Objection = Problem | Warning | FigureWarning;

/**
 * What is wrong with a train file, without its place: what, the name, and the way out. One
 * line; names stand as they are spelt in the file.
 */
export function problemText(problem: Objection, voice: Voice = voiceOf('en')): string {
  return word(problem, voice);
}

function word(p: Objection, voice: Voice): string {
  const near = (name: string | undefined) => ({
    has: name === undefined ? 'no' : 'yes',
    near: visible(name ?? ''),
  });
  const list = (names: readonly string[]) => voice.list(names.map(visible));
  switch (p.problem) {
    case 'too large':
      return voice.say('problem.too large', { characters: p.characters, most: p.most });
    case 'bad character':
      return voice.say('problem.bad character', {
        code: codePoint(p.code),
        turns: visible(String.fromCodePoint(p.code)) === '\uFFFD' && p.code > 0xff ? 'yes' : 'no',
      });
    case 'syntax':
      return voice.say('problem.syntax', { what: keyOf(p.what) });
    case 'merge mark':
    case 'several documents':
      return voice.say(`problem.${p.problem}`);
    case 'refused':
      return voice.say('problem.refused', { what: keyOf(p.what) });
    case 'too deep':
      return voice.say('problem.too deep', { most: p.most });
    case 'duplicate key':
      return voice.say('problem.duplicate key', { name: visible(p.key) });
    case 'unknown key':
      return voice.say('problem.unknown key', { name: visible(p.key), ...near(p.near) });
    case 'misplaced key':
      return voice.say('problem.misplaced key', { name: visible(p.key), beside: list([p.beside]) });
    case 'missing key':
      return voice.say('problem.missing key', { names: alternatives(p.keys, voice) });
    case 'expected': {
      const what = voice.say('expected', { what: keyOf(p.what) });
      const has = p.found === '' ? 'no' : 'yes';
      return voice.say('problem.expected', { what, has, found: visible(p.found) });
    }
    case 'expected keys': {
      const form = `{ ${p.keys.map((key) => `${visible(key)}: …`).join(', ')} }`;
      const has = p.found === '' ? 'no' : 'yes';
      return voice.say('problem.expected keys', { form, has, found: visible(p.found) });
    }
    case 'newer version':
      return voice.say('problem.newer version', { version: p.version, newest: p.newest });
    case 'too many':
      return voice.say('problem.too many', { what: p.what, count: p.count, most: p.most });
    case 'unknown set':
      return voice.say('problem.unknown set', { name: visible(p.set), ...near(p.near) });
    case 'unknown part': {
      const names = { set: visible(p.set), part: visible(p.part), names: list(p.parts) };
      return voice.say('problem.unknown part', { ...names, ...near(p.near) });
    }
    case 'unknown wheel': {
      const names = { set: visible(p.set), name: visible(p.wheel) };
      return voice.say('problem.unknown wheel', { ...names, ...near(p.near) });
    }
    case 'unknown gear pair':
      return voice.say('problem.unknown gear pair', { name: visible(p.pair), ...near(p.near) });
    case 'unknown device':
      return voice.say('problem.unknown device', { name: visible(p.device), ...near(p.near) });
    case 'inside out':
      return voice.say('problem.inside out', { inner: p.inner, outer: p.outer });
    case 'ends reversed':
    case 'two units':
      return voice.say(`problem.${p.problem}`, { least: visible(p.least), most: visible(p.most) });
    case 'limit doubted':
      return limitDoubtedText(p, voice);
    case 'nothing measured':
    case 'unknown carried':
    case 'nothing to measure':
      return voice.say(`problem.${p.problem}`, { name: visible(p.name), ...near(p.near) });
    case 'other kind': {
      const names = { name: visible(p.device), kind: keyOf(p.kind) };
      return voice.say('problem.other kind', names);
    }
    case 'not applied':
    case 'no plates':
    case 'not a band':
    case 'device does nothing':
    case 'device never applied':
      return voice.say(`problem.${p.problem}`, { name: visible(p.device) });
    case 'no band':
    case 'no pack':
      return voice.say(`problem.${p.problem}`, { name: visible(p.device), ...near(p.near) });
    case 'no preload':
      return voice.say('problem.no preload', { name: visible(p.bearings), ...near(p.near) });
    case 'no wear':
      return voice.say('problem.no wear', { name: visible(p.part), ...near(p.near) });
    case 'no end play':
      return voice.say('problem.no end play', { name: visible(p.shaft), ...near(p.near) });
    case 'listed twice':
    case 'reserved name':
    case 'not carried':
      return voice.say(`problem.${p.problem}`, { name: visible(p.name) });
    case 'name of nobody':
      return voice.say('problem.name of nobody', { name: visible(p.name), ...near(p.near) });
    case 'told alike': {
      const names = { name: visible(p.name), said: visible(p.said), other: visible(p.other) };
      return voice.say('problem.told alike', names);
    }
    case 'name taken':
      return voice.say('problem.name taken', { name: visible(p.name), by: keyOf(p.by) });
    case 'not a member':
      return voice.say('problem.not a member', { name: visible(p.name), is: keyOf(p.is) });
    case 'joined to itself':
      return voice.say('problem.joined to itself', { name: visible(p.member) });
    case 'case cannot turn':
      return voice.say('problem.case cannot turn', { end: p.end });
    case 'end taken':
      return voice.say('problem.end taken', {
        member: visible(p.member),
        by: visible(p.by),
        end: p.end,
      });
    case 'planet as an end':
      return voice.say('problem.planet as an end', { member: visible(p.member) });
    case 'forward taken':
    case 'forward against':
      return voice.say(`problem.${p.problem}`, {
        way: voice.say('way', { way: p.way }),
        key: `forward: ${p.way}`,
      });
    case 'cannot share':
      return voice.say('problem.cannot share', { name: visible(p.set) });
    case 'shares in a circle':
      return voice.say('problem.shares in a circle', { names: list(p.sets) });
    case 'planets differ': {
      const { planets, there } = p;
      return voice.say('problem.planets differ', { planets, there, set: visible(p.set) });
    }
    case 'meshes itself':
      return voice.say('problem.meshes itself', { name: visible(p.wheel) });
    case 'none carried': {
      const [a, b] = p.wheels.map(visible) as [string, string];
      return voice.say('problem.none carried', { a, b });
    }
    case 'half written':
    case 'changed since':
      return voice.say(`problem.${p.problem}`);
    case 'strikes nothing':
      return voice.say('problem.strikes nothing', { id: visible(p.id) });
    case 'no scale of speeds':
      return voice.say('problem.no scale of speeds');
    case 'unknown test':
      return voice.say('problem.unknown test', { name: visible(p.test), ...near(p.near) });
    case 'unknown outcome': {
      const names = { name: visible(p.outcome), test: visible(p.test) };
      const all = alternatives(p.can.map(visible), voice);
      return voice.say('problem.unknown outcome', { ...names, all, ...near(p.near) });
    }
    case 'unknown teardown part':
      return voice.say('problem.unknown teardown part', {
        name: visible(p.part),
        ...near(p.near),
      });
    case 'carried twice':
      return voice.say('problem.carried twice', { name: visible(p.name), by: visible(p.by) });
    case 'comes off too early': {
      const names = { part: visible(p.part), cover: visible(p.cover) };
      return voice.say('problem.comes off too early', {
        ...names,
        itself: p.part === p.cover ? 'yes' : 'no',
      });
    }
    case 'closes too early':
      return voice.say('problem.closes too early', {
        part: visible(p.part),
        name: visible(p.name),
        later: visible(p.later),
      });
    case 'feeds all':
      return voice.say('problem.feeds all', { part: visible(p.part) });
    case 'and more':
      return voice.say('problem.and more', { count: p.count });
    case 'ring does not fit':
    case 'planets not evenly spaced':
    case 'planets touch':
    case 'centre distances differ':
    case 'no room inside':
      return teethText(p, voice);
    case 'oil':
      return voice.say('problem.oil', { is: keyOf(p.is), name: visible(p.name), ...near(p.near) });
    case 'member carries nothing': {
      const names = { name: visible(p.member), touched: visible(p.touched) };
      return voice.say('problem.member carries nothing', names);
    }
    case 'set stands alone':
      return voice.say('problem.set stands alone', { name: visible(p.set) });
    case 'one cause':
      return oneCauseText(p, voice);
    case 'gear is neutral':
    case 'gear ties up':
    case 'neutral drives':
      return voice.say(`problem.${p.problem}`, { name: visible(`${p.range} ${p.gear}`) });
    case 'oil differs':
    case 'oil unsettled': {
      const gear = visible(`${p.range} ${p.gear}`);
      if (p.problem === 'oil unsettled')
        return voice.say('problem.oil unsettled', { gear, is: p.is });
      const device = visible(p.device);
      return voice.say('problem.oil differs', { gear, device, does: keyOf(p.does) });
    }
    case 'counts differ': {
      const counts = p.counts.map(({ in: section, frictions }) => {
        const faces = section === 'capacities' ? 'yes' : 'no';
        const count = faces === 'yes' ? 2 * frictions : frictions;
        return voice.say('problem.counted', { section, faces, count });
      });
      return voice.say('problem.counts differ', {
        name: visible(p.of),
        counts: voice.list(counts),
      });
    }
    case 'limits turned round':
    case 'limit without figures':
    case 'limit in two units':
    case 'shelf out of reach':
    case 'shelf too coarse':
    case 'fitted not on the shelf':
    case 'shelf without limits':
    case 'no friction to share':
    case 'squash of no cushion':
    case 'squash without air':
      return voice.say(`problem.${p.problem}`, { name: visible(p.of) });
    case 'lonely name':
      return voice.say('problem.lonely name', { name: visible(p.name), near: visible(p.near) });
    case 'renamed':
      return voice.say('problem.renamed', { old: visible(p.old), now: p.now });
    case 'one body': {
      const [a, b] = p.members.map(visible) as [string, string];
      return voice.say('problem.one body', { name: visible(p.device), a, b });
    }
  }
}

function codePoint(code: number): string {
  return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}
