import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { askFeel, askHalfBuilt } from '../../asking/build/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { type PlannedCheck, type Step } from '../../engine/plan/index.ts';
import { assemble, type Part, type Train, type Way } from '../../engine/train/index.ts';
import { feltText } from '../../telling/narrative/index.ts';
import type { Scene } from '../../telling/scene/index.ts';
import { paintStickDiagram } from '../../telling/stickdiagram/index.ts';
import { layoutOf } from '../diagram/index.ts';
import { Drawing } from '../figure/index.ts';
import { useWord } from '../handsfree/index.ts';
import { lit } from '../strip/index.ts';
import { isCalm, stand, voiceNow } from '../words/index.ts';
import type { Building } from './building.ts';
import { Grips } from './grips.tsx';
import { HAND, TURN } from './hands.ts';
import { words } from './words.ts';

interface Props {
  readonly building: Building;
  readonly step: Step;
  readonly check: PlannedCheck;
}

/**
 * The unit as far as it is built, what is not on yet drawn faintly; a hand on what is held, and what
 * is turned moves one way and then the other, as far as a right build lets it.
 */
export function HalfBuilt({ building, step, check }: Props) {
  const say = words();
  const [train, { plan }] = [building.train.value, building];
  const place = useRef<HTMLElement>(null);
  const [shown, show] = useState(isCalm() ? 0 : 1);
  const stands = useMemo(
    () => train && plan && standsAt(train, askHalfBuilt(train, plan, step), step, check),
    [train, plan, step, check],
  );
  useWord('again', () => show(shown + 1));
  const title = say.picture(feltText(check.right, voiceNow(), stand.value));
  const scene = useMemo(
    () => train && plan && sceneOf(train, partsOn(train, plan.steps, step), title),
    [train, plan, step, title],
  );
  useEffect(() => {
    const [its, svg] = [place.current, place.current?.querySelector('.build-drawing svg')];
    if (!its || !svg || !train || !stands) return undefined;
    layHands(svg as SVGSVGElement, train, check);
    return shown > 0 ? sway(its, stands, labelOf(train, check.turn.member)) : undefined;
  }, [scene, stands, shown]);
  if (!scene || !stands) return null;
  return (
    <figure class="build-half" ref={place}>
      <Grips check={check} />
      <div class="build-drawing">
        <Drawing scene={scene} />
      </div>
      <figcaption>
        <span class="aside">{say.pictureKey}</span>{' '}
        <button type="button" onClick={() => show(shown + 1)}>
          {say.again}
        </button>
      </figcaption>
    </figure>
  );
}

type Speeds = ReadonlyMap<string, number>;

/** How fast each dial turns with the hand, either way; empty where it locks. */
type Stands = Readonly<Record<Way, Speeds>>;

function standsAt(train: Train, half: Train, step: Step, check: PlannedCheck): Stands {
  const whole = assemble(train).bodies;
  const { bodyOf } = assemble(half);
  const near = [check.turn.member, ...(check.hold ? [check.hold.member] : [])];
  const asked = bodyOf(check.turn.member) === undefined ? undefined : askFeel(half, step, check);
  const speeds = (way: Way): Speeds => {
    const felt = asked?.[way];
    if (!felt?.turns) return new Map();
    return new Map(
      whole.flatMap(({ label, names }) => {
        const own = [...near.filter((name) => names.includes(name)), label, ...names];
        const name = own.find((its) => felt.drawn.has(its));
        return name === undefined ? [] : [[label, toNumber(felt.drawn.get(name) ?? ZERO)] as const];
      }),
    );
  };
  return { clockwise: speeds('clockwise'), anticlockwise: speeds('anticlockwise') };
}

function partsOn({ teardown = [] }: Train, steps: readonly Step[], at: Step): ReadonlySet<Part> {
  const names = new Set(
    steps.flatMap((step) => {
      return step.does === 'fit' && step.number <= at.number ? [step.part.name] : [];
    }),
  );
  return new Set(teardown.filter(({ name }) => names.has(name)));
}

// All that is on counts as one part, whose lines are lit.
function sceneOf(train: Train, on: ReadonlySet<Part>, title: string): Scene {
  const drawn = layoutOf(train, voiceNow());
  const { teardown = [] } = train;
  const together: Part = { name: '', carries: [...on].flatMap(({ carries }) => carries) };
  const rest = teardown.filter((part) => !on.has(part));
  const half = { ...train, teardown: [together, ...rest] };
  return lit(drawn, paintStickDiagram(drawn, title), half, together);
}

// The dial of a member, by its name.
function labelOf(train: Train, member: string): string | undefined {
  const { bodies, bodyOf } = assemble(train);
  return bodies[bodyOf(member) ?? -1]?.label;
}

// A hand on the dial that is held, arrows round the one that is turned; where one dial is both, it is
// only pointed at, and each has a dial of its own beside the drawing.
function layHands(svg: SVGSVGElement, train: Train, { hold, turn }: PlannedCheck): void {
  const handle = (member: string | undefined) => {
    const label = member === undefined ? undefined : labelOf(train, member);
    return label === undefined
      ? null
      : svg.querySelector<SVGGElement>(`.handle[data-name="${CSS.escape(label)}"]`);
  };
  for (const old of svg.querySelectorAll('.build-hand')) old.remove();
  for (const look of ['build-held', 'build-turned', 'build-both']) {
    for (const old of svg.querySelectorAll(`.handle.${look}`)) old.classList.remove(look);
  }
  const both = hold && handle(hold.member);
  if (both && both === handle(turn.member)) {
    both.classList.add('build-both');
    return;
  }
  const put = (at: SVGGElement | null, look: string, d: string) => {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('class', `build-hand ${look}`);
    path.setAttribute('d', d);
    (at?.querySelector('.dial') ?? at)?.append(path);
    at?.classList.add(look);
  };
  put(handle(turn.member), 'build-turned', TURN);
  put(handle(hold?.member), 'build-held', HAND);
}

const SECONDS = 1.5;
const DEGREES = 70;
/** What a hand feels before it locks. */
const LASH = 4;
const TIMES = 2;

// One way and back, then the other way and back, a few times; then it rests.
function sway(figure: HTMLElement, stands: Stands, turned: string | undefined): () => void {
  const handles = [...figure.querySelectorAll('.handle:not(.build-both)')];
  const faces = handles.flatMap((handle) => {
    const face = handle.querySelector('.dial-face');
    return face ? [{ label: handle.getAttribute('data-name') ?? '', face }] : [];
  });
  const own = figure.querySelector('.build-grip.build-turned .dial-face');
  if (own) faces.push({ label: turned ?? '', face: own });
  const began = performance.now();
  let frame = 0;
  const paint = (now: number) => {
    const phase = (now - began) / 1000 / SECONDS;
    const way: Way = Math.floor(phase) % 2 === 0 ? 'clockwise' : 'anticlockwise';
    const swing = Math.sin((phase % 1) * Math.PI) ** 2;
    const rests = phase >= 2 * TIMES;
    const speeds = stands[way];
    const lash = way === 'clockwise' ? LASH : -LASH;
    for (const { label, face } of faces) {
      const moves =
        speeds.size > 0 ? (speeds.get(label) ?? 0) * DEGREES : label === turned ? lash : 0;
      const angle = rests ? 0 : Math.max(-360, Math.min(360, moves)) * swing;
      face.setAttribute('transform', `rotate(${angle.toFixed(1)})`);
    }
    figure.classList.toggle('build-locks', !rests && speeds.size === 0);
    if (!rests) frame = requestAnimationFrame(paint);
  };
  frame = requestAnimationFrame(paint);
  return () => cancelAnimationFrame(frame);
}

const ZERO = { num: 0, den: 1 } as const;
