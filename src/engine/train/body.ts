import { gearingOf } from './gearing.ts';
import type { Gearing } from './mesh.ts';
import { CASE, type MemberName } from './member.ts';
import { outputsOf } from './outputs.ts';
import type { Train } from './train.ts';

/** One rigid body: all the names of members that are splined, welded or joined into it. */
export interface Body {
  /** The name that sentences use: `case`, else a join's, else a plain name, else a set's part. */
  readonly label: MemberName;
  readonly names: readonly MemberName[];
}

/** Who is one body with whom. Body 0 is the case. */
export interface Assembly {
  readonly bodies: readonly Body[];
  /** Every name, the case's too, in the order in which the train gives them. */
  readonly members: readonly MemberName[];
  readonly gearing: Gearing;
  /** The bodies that turn on a pin: planets, but for one that has seized to its carrier. */
  readonly onPins: ReadonlySet<number>;
  /** The index of the body that has a name, or undefined for a name that the train lacks. */
  bodyOf(name: MemberName): number | undefined;
}

/** Which names of a train are one body, by its joins and its planets. */
export function assemble(train: Train): Assembly {
  const gearing = gearingOf(train);
  const groups = new Groups();
  groups.add(CASE);
  for (const name of [train.input, ...outputsOf(train), ...gearing.members]) groups.add(name);
  for (const planet of gearing.planets) groups.add(planet.member);
  for (const { first, second } of train.devices) [first, second].forEach((n) => groups.add(n));
  for (const join of [...train.joins, ...gearing.welds]) {
    for (const member of join.members) groups.unite(join.name, member);
  }
  const rank = new Map<MemberName, number>([[CASE, 0]]);
  for (const { name } of train.joins) if (!name.includes('.') && name !== CASE) rank.set(name, 1);
  const rankOf = (name: MemberName) => rank.get(name) ?? (name.includes('.') ? 3 : 2);
  const bodies = groups.list().map((names) => {
    const label = names.reduce((best, name) => (rankOf(name) < rankOf(best) ? name : best));
    return { label, names };
  });
  const index = new Map<MemberName, number>();
  bodies.forEach((body, i) => body.names.forEach((name) => index.set(name, i)));
  const onPins = new Set(
    gearing.planets
      .filter(({ member, carrier }) => index.get(member) !== index.get(carrier))
      .map(({ member }) => index.get(member) as number),
  );
  const bodyOf = (name: MemberName) => index.get(name);
  return { bodies, members: groups.names(), gearing, onPins, bodyOf };
}

// Disjoint sets of names (union-find), listed in the order in which they were first named.
class Groups {
  private readonly parent = new Map<MemberName, MemberName>();

  add(name: MemberName): void {
    if (!this.parent.has(name)) this.parent.set(name, name);
  }

  unite(a: MemberName, b: MemberName): void {
    this.add(a);
    this.add(b);
    this.parent.set(this.find(b), this.find(a));
  }

  names(): MemberName[] {
    return [...this.parent.keys()];
  }

  list(): MemberName[][] {
    const groups = new Map<MemberName, MemberName[]>();
    for (const name of this.parent.keys()) {
      const root = this.find(name);
      const group = groups.get(root);
      if (group) group.push(name);
      else groups.set(root, [name]);
    }
    return [...groups.values()];
  }

  private find(name: MemberName): MemberName {
    let root = name;
    for (;;) {
      const above = this.parent.get(root) as MemberName;
      if (above === root) break;
      root = above;
    }
    this.parent.set(name, root);
    return root;
  }
}
