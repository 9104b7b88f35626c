import type { DeviceKind } from '../../engine/train/index.ts';
import { spoken } from '../words/index.ts';

// Of an inner and an outer race there are two questions of their own.
type FirstOf = Record<Exclude<DeviceKind, 'one-way'>, (it: string) => string>;

/** The questions, each by its prompt; `it` is what the round is about, in the reader's words. */
export const questions = spoken({
  en: {
    ask: {
      name: {
        name: () => 'What do you call this train?',
        set: () => 'A planetary set: what do you call it?',
        device: () => 'What do you call it?',
        join: () => 'They make one piece: what do you call it?',
        'gear pair': () => 'A pair of gears on parallel shafts: what do you call it?',
      },
      member: {
        input: () => 'Which shaft comes in from the engine?',
        output: () => 'Which shaft goes out to the load?',
      },
      'planets are': (it: string) => `${it} set: what is between the sun and the ring?`,
      shares: (it: string) => `${it} set: whose planets are they?`,
      has: (it: string) => `${it} set: which wheels are its own?`,
      reaches: (it: string) => `${it} set: how does its sun reach those planets?`,
      sun: (it: string) => `${it} set: count the teeth of the sun.`,
      ring: (it: string) => `${it} set: count the teeth of the ring.`,
      'first step': (it: string) =>
        `${it} set: count the teeth of the planet’s wheel that meshes the sun.`,
      'second step': (it: string) =>
        `${it} set: count the teeth of the planet’s wheel that meshes the ring.`,
      planets: (it: string) => `${it} set: how many planets are there?`,
      planet: (it: string) => `${it} set: count the teeth of a planet.`,
      pairs: (it: string) => `${it} set: how many pairs of planets are there?`,
      'inner planets': (it: string) => `${it} set: how many short planets are there?`,
      left: (it: string) => `${it} set: count the teeth of the left side gear.`,
      right: (it: string) => `${it} set: count the teeth of the right side gear.`,
      bevels: (it: string) => `${it} set: how many bevel pinions are there?`,
      with: (it: string) => `What is the ${it} splined, tabbed or welded to?`,
      kind: () => 'What holds or joins parts?',
      first: {
        clutch: (it: string) => `${it}: which two parts does it join? First the one.`,
        brake: (it: string) => `${it}: which part does it hold to the case?`,
        band: (it: string) => `${it}: round which drum does it lie?`,
        pawl: (it: string) => `${it}: into which part does it fall?`,
      } satisfies FirstOf,
      second: (it: string) => `${it}: and the other?`,
      inner: (it: string) => `${it}: what is its inner race?`,
      outer: (it: string) => `${it}: what is its outer race?`,
      lets: (it: string) =>
        `${it}: hold the outer race still. Which way does the inner race turn freely?`,
      driver: (it: string) => `${it}: which part carries the wheel that drives?`,
      'driver teeth': (it: string) => `${it}: count the teeth of the wheel that drives.`,
      driven: (it: string) => `${it}: which part carries the wheel that is driven?`,
      'driven teeth': (it: string) => `${it}: count the teeth of the wheel that is driven.`,
      turns: (it: string) => `${it}: how do the two wheels meet?`,
      range: () => 'A gear: at which position of the selector?',
      gear: () => 'Which gear is it?',
      on: (it: string) => `${it}: what is applied?`,
    },
    hint: {
      name: {
        name: '',
        set: 'Say where it sits: front, middle, rear.',
        device: 'Say what it does: forward clutch, low brake, second roller.',
        join: 'A drum, a shell, a shaft.',
        'gear pair': 'Transfer gears, final drive.',
      },
      member: 'Give it the name that you use, or pick a part.',
      sun: 'Mark a tooth with chalk and count round to it.',
      ring: 'Mark a tooth with chalk and count round to it.',
      planet: 'Leave it where it cannot be counted: it follows from the sun and the ring.',
      with: 'Pick all that it makes one piece with. What only a clutch, a band or a one-way clutch takes is not one piece with it.',
      inner: 'The member that its inner race is one piece with.',
      outer: 'The member that its outer race is one piece with; or the case.',
      lets: 'As it sits in the train: turned over, it tells the opposite.',
      range: 'As it stands on the lever: D, 2, L, R, N.',
      gear: '1, 2, 3, R.',
      on: 'Pick all. Nobody applies a one-way clutch: it holds by itself.',
    },
    options: {
      'planets are': {
        plain: 'One planet: it meshes both',
        pair: 'Two planets in mesh: one meshes the sun, its mate the ring',
        stepped: 'A stepped planet: two wheels on one body',
        sharing: 'The planets of another set, longer than they look',
        bevel: 'Neither: a bevel differential',
      },
      has: { sun: 'A sun', ring: 'A ring', both: 'A sun and a ring' },
      reaches: { straight: 'It meshes them', through: 'Through short planets of its own' },
      kind: {
        clutch: 'A plate clutch: it joins two parts that turn',
        brake: 'A plate brake: it holds a part to the case',
        band: 'A band: it holds a drum to the case',
        pawl: 'A park pawl: a tooth that locks a part to the case',
        'one-way': 'A one-way clutch: sprags or rollers',
      } satisfies Record<DeviceKind, string>,
      turns: {
        external: 'Teeth outside on both: they turn opposite ways',
        internal: 'One inside the other: they turn the same way',
        chain: 'By a chain: they turn the same way',
      },
      lets: { clockwise: 'Clockwise', anticlockwise: 'Anticlockwise' },
    },
    train: 'train',
  },
  es: {
    ask: {
      name: {
        name: () => '¿Cómo llama a este tren?',
        set: () => 'Un juego planetario: ¿cómo lo llama?',
        device: () => '¿Cómo lo llama?',
        join: () => 'Son una sola pieza: ¿cómo la llama?',
        'gear pair': () => 'Un par de engranajes en ejes paralelos: ¿cómo lo llama?',
      },
      member: {
        input: () => '¿Qué eje entra desde el motor?',
        output: () => '¿Qué eje sale hacia la carga?',
      },
      'planets are': (it: string) => `Juego ${it}: ¿qué hay entre el planetario y la corona?`,
      shares: (it: string) => `Juego ${it}: ¿de quién son los satélites?`,
      has: (it: string) => `Juego ${it}: ¿qué ruedas son suyas?`,
      reaches: (it: string) => `Juego ${it}: ¿cómo llega su planetario a esos satélites?`,
      sun: (it: string) => `Juego ${it}: cuente los dientes del planetario.`,
      ring: (it: string) => `Juego ${it}: cuente los dientes de la corona.`,
      'first step': (it: string) =>
        `Juego ${it}: cuente los dientes del escalón del satélite que engrana con el planetario.`,
      'second step': (it: string) =>
        `Juego ${it}: cuente los dientes del escalón del satélite que engrana con la corona.`,
      planets: (it: string) => `Juego ${it}: ¿cuántos satélites hay?`,
      planet: (it: string) => `Juego ${it}: cuente los dientes de un satélite.`,
      pairs: (it: string) => `Juego ${it}: ¿cuántos pares de satélites hay?`,
      'inner planets': (it: string) => `Juego ${it}: ¿cuántos satélites cortos hay?`,
      left: (it: string) => `Juego ${it}: cuente los dientes de la rueda lateral izquierda.`,
      right: (it: string) => `Juego ${it}: cuente los dientes de la rueda lateral derecha.`,
      bevels: (it: string) => `Juego ${it}: ¿cuántos piñones cónicos hay?`,
      with: (it: string) => `¿A qué está estriado, encajado o soldado ${it}?`,
      kind: () => '¿Qué retiene o une piezas?',
      first: {
        clutch: (it: string) => `${it}: ¿qué dos piezas une? Primero, una.`,
        brake: (it: string) => `${it}: ¿qué pieza retiene contra la carcasa?`,
        band: (it: string) => `${it}: ¿alrededor de qué tambor va?`,
        pawl: (it: string) => `${it}: ¿en qué pieza cae?`,
      } satisfies FirstOf,
      second: (it: string) => `${it}: ¿y la otra?`,
      inner: (it: string) => `${it}: ¿cuál es su pista interior?`,
      outer: (it: string) => `${it}: ¿cuál es su pista exterior?`,
      lets: (it: string) =>
        `${it}: retenga quieta la pista exterior. ¿Hacia dónde gira libre la interior?`,
      driver: (it: string) => `${it}: ¿qué pieza lleva la rueda que mueve?`,
      'driver teeth': (it: string) => `${it}: cuente los dientes de la rueda que mueve.`,
      driven: (it: string) => `${it}: ¿qué pieza lleva la rueda movida?`,
      'driven teeth': (it: string) => `${it}: cuente los dientes de la rueda movida.`,
      turns: (it: string) => `${it}: ¿cómo se tocan las dos ruedas?`,
      range: () => 'Una marcha: ¿en qué posición de la palanca?',
      gear: () => '¿Qué marcha es?',
      on: (it: string) => `${it}: ¿qué se aplica?`,
    },
    hint: {
      name: {
        name: '',
        set: 'Diga dónde está: delantero, medio, trasero.',
        device: 'Diga qué hace: embrague de avance, freno de baja.',
        join: 'Un tambor, una campana, un eje.',
        'gear pair': 'Engranes de transferencia, mando final.',
      },
      member: 'Dele el nombre que usted usa, o elija una pieza.',
      sun: 'Marque un diente con tiza y cuente hasta volver a él.',
      ring: 'Marque un diente con tiza y cuente hasta volver a él.',
      planet: 'Déjelo si no se puede contar: resulta del planetario y la corona.',
      with: 'Elija todo lo que es una sola pieza con él. Lo que solo toma un embrague, una banda o una rueda libre no lo es.',
      inner: 'El miembro con el que su pista interior es una sola pieza.',
      outer: 'El miembro con el que su pista exterior es una sola pieza; o la carcasa.',
      lets: 'Como va montada en el tren: volteada dice lo contrario.',
      range: 'Como está en la palanca: D, 2, L, R, N.',
      gear: '1, 2, 3, R.',
      on: 'Elija todo. Nadie aplica una rueda libre: retiene por sí sola.',
    },
    options: {
      'planets are': {
        plain: 'Un satélite: engrana con los dos',
        pair: 'Dos satélites engranados: uno con el planetario, su pareja con la corona',
        stepped: 'Un satélite escalonado: dos ruedas en un cuerpo',
        sharing: 'Los satélites de otro juego, más largos de lo que parecen',
        bevel: 'Ninguno: un diferencial cónico (bevel)',
      },
      has: { sun: 'Un planetario', ring: 'Una corona', both: 'Un planetario y una corona' },
      reaches: { straight: 'Engrana con ellos', through: 'Por satélites cortos propios' },
      kind: {
        clutch: 'Un embrague de discos: une dos piezas que giran',
        brake: 'Un freno de discos: retiene una pieza contra la carcasa',
        band: 'Una banda: retiene un tambor contra la carcasa',
        pawl: 'Un trinquete de estacionamiento: un diente que traba una pieza con la carcasa',
        'one-way': 'Una rueda libre: de cuñas o de rodillos',
      } satisfies Record<DeviceKind, string>,
      turns: {
        external: 'Dientes por fuera en las dos: giran al revés',
        internal: 'Una dentro de la otra: giran igual',
        chain: 'Por cadena: giran igual',
      },
      lets: { clockwise: 'Sentido horario', anticlockwise: 'Sentido antihorario' },
    },
    train: 'tren',
  },
});

type Questions = ReturnType<typeof questions>;
type Worded = string | ((it: string) => string);

/** The question of a prompt, and the line below it; `kind` picks where a prompt is asked of several. */
export function questionOf(
  say: Questions,
  key: string,
  kind: string,
  it: string,
): { readonly question: string; readonly hint: string } {
  const question = pick((say.ask as Table)[key], kind);
  const hint = pick((say.hint as Table)[key], kind);
  return { question: worded(question, it), hint: worded(hint, it) };
}

/** An option of the program's own, in the reader's words. */
export function optionText(say: Questions, key: string, option: string): string {
  return (
    (say.options as Readonly<Record<string, Readonly<Record<string, string>>>>)[key]?.[option] ??
    option
  );
}

type Table = Readonly<Record<string, Worded | Readonly<Record<string, Worded>> | undefined>>;

function pick(entry: Table[string], kind: string): Worded {
  if (entry === undefined) return '';
  return typeof entry === 'object' ? (entry[kind] ?? '') : entry;
}

function worded(text: Worded, it: string): string {
  const said = typeof text === 'string' ? text : text(it);
  return said.charAt(0).toLocaleUpperCase() + said.slice(1);
}
