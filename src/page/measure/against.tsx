import type { MeasuredThing } from '../../asking/build/index.ts';
import { compare, toNumber } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { asWritten } from '../../shop/length/index.ts';
import type { Remark } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import type { Measuring } from './measuring.ts';
import type { Telling } from './telling.ts';
import { shelfOf, type Typed, type ReadingWay } from './ways.ts';
import { words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly thing: MeasuredThing;
  readonly telling: Telling;
  readonly way: ReadingWay;
}

/** What speaks against the readings, each with its way out; until it is taken no part is offered. */
export function Against({ measuring, thing, telling, way }: Props) {
  const say = words();
  const { against } = telling;
  if (against.length === 0) return null;
  const typed = measuring.typed.value;
  const row = way.fields.find(({ many }) => many)?.field ?? '';
  const standing = typed
    .map((its, place) => ({ ...its, place }))
    .filter((its) => its.field === row && !its.struck);
  return (
    <div class="measure-against" role="alert">
      <h3>{say.against}</h3>
      {against.map(([remark, text]) => {
        const places = placesOf(remark, standing);
        const meant = unitMeantBy(remark);
        const stray = strayOf(remark, standing);
        const swapped = remark.remark === 'digits swapped' ? asWritten(remark.meant) : undefined;
        const only =
          places.length === 1 ? standing.find((its) => its.place === places[0]) : undefined;
        return (
          <div key={text}>
            <p>{text}</p>
            {remark.remark === 'plates spent' && (
              <div class="row">
                <LargeButton onPress={() => void fresh(measuring, thing)}>
                  {say.newPlates}
                </LargeButton>
              </div>
            )}
            {places.length > 0 && (
              <div class="row">
                {meant !== undefined && (
                  <LargeButton onPress={() => measuring.strikeTyped(places, meant)}>
                    {say.was(meant)}
                  </LargeButton>
                )}
                {swapped && places.length === 1 && (
                  <LargeButton onPress={() => measuring.retype(places[0] as number, swapped)}>
                    {say.was(swapped)}
                  </LargeButton>
                )}
                {stray && (
                  <LargeButton onPress={() => measuring.strikeTyped([stray.place])}>
                    {say.strikeIt(stray.text)}
                  </LargeButton>
                )}
                <LargeButton onPress={() => measuring.strikeTyped(places)}>
                  {only ? say.strikeIt(only.text) : say.strikeAll}
                </LargeButton>
              </div>
            )}
          </div>
        );
      })}
      {shelfOf(thing) && <p>{say.withheld}</p>}
    </div>
  );
}

// What was typed before is of the plates that went.
async function fresh(measuring: Measuring, thing: MeasuredThing): Promise<void> {
  const old = measuring.typed.value.map((_, place) => place);
  if (await measuring.enter(newPlates(thing))) measuring.strikeTyped(old);
}

// By the pack's own name: no part of the teardown is said to be on by it.
function newPlates({ name }: MeasuredThing): Told {
  return { kind: 'installed', part: name, replaced: true };
}

type Placed = Typed & { readonly place: number };

// Which of the readings it speaks of: of one, of some, or of all of them.
function placesOf(remark: Remark, standing: readonly Placed[]): readonly number[] {
  const all = standing.map(({ place }) => place);
  switch (remark.remark) {
    // What was read is not wrong: the plates are.
    case 'plates spent':
      return [];
    case 'other unit':
    case 'other unit of a plate': {
      const one = remark.place === undefined ? undefined : all[remark.place - 1];
      return one === undefined ? all : [one];
    }
    case 'not possible':
    case 'digits swapped':
    case 'point slipped': {
      const same = standing.find(({ text }) => {
        const read = quantityFrom(text, 'length');
        return read && compare(read.size, remark.read.um) === 0;
      });
      return same ? [same.place] : all;
    }
    case 'torque slipped': {
      const same = standing.find(({ text }) => {
        const read = quantityFrom(text, 'torque');
        return read && compare(read.size, remark.read.nm) === 0;
      });
      return same ? [same.place] : all;
    }
    default:
      return all;
  }
}

// Of readings that are too far apart, the one that is farthest from the middle one.
function strayOf(remark: Remark, standing: readonly Placed[]): Placed | undefined {
  if (remark.remark !== 'uneven' && remark.remark !== 'uneven torque') return undefined;
  if (standing.length < 3) return undefined;
  const sizes = standing.flatMap((its) => {
    const read = quantityFrom(its.text, 'length') ?? quantityFrom(its.text, 'torque');
    return read ? [{ its, size: toNumber(read.size) }] : [];
  });
  const sorted = sizes.toSorted((a, b) => a.size - b.size);
  const middle = sorted[Math.floor(sorted.length / 2)]?.size ?? 0;
  return sizes.toSorted((a, b) => Math.abs(b.size - middle) - Math.abs(a.size - middle))[0]?.its;
}

function unitMeantBy(remark: Remark): string | undefined {
  return remark.remark === 'other unit' ||
    remark.remark === 'other unit of a plate' ||
    remark.remark === 'other torque unit'
    ? remark.meant
    : undefined;
}
