import { describe, expect, it } from 'vitest';
import { voiceOf } from '../voice/index.ts';
import type { Fact } from '../../engine/flow/index.ts';
import { fraction, ONE, ZERO } from '../../engine/linear/index.ts';
import { sentences } from './reasons.ts';

const push = { pushed: 'anticlockwise', torque: fraction(16, 11) } as const;
const turned: Fact = { fact: 'turned', member: 'turbine shaft', end: 'input', way: 'clockwise' };
const coasted: Fact = { fact: 'turned', member: 'main shaft', end: 'output', way: 'clockwise' };

// A fact, what English and Spanish say of it, under power.
const SAID: readonly [Fact, string, string][] = [
  [
    turned,
    'The input, the turbine shaft, is turned clockwise, seen from the input end.',
    'Se hace girar la entrada, «turbine shaft», en sentido horario, visto desde el lado de entrada.',
  ],
  [
    {
      fact: 'carries',
      device: 'forward clutch',
      kind: 'clutch',
      from: 'turbine shaft',
      to: 'front.ring',
      pushed: 'clockwise',
      torque: ONE,
    },
    'The forward clutch carries the load from the turbine shaft to the front ring, pushing it clockwise with the input torque.',
    '«forward clutch» lleva la carga de «turbine shaft» a «corona front», y lo empuja en sentido horario con el par de entrada.',
  ],
  [
    { fact: 'carries', device: 'roller', kind: 'one-way', from: 'sun shell', to: 'race', ...push },
    'The roller locks and carries the load from the sun shell to the race, pushing it anticlockwise with 16/11 = 1.455 times input torque.',
    '«roller» se bloquea y lleva la carga de «sun shell» a «race», y lo empuja en sentido antihorario con 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    {
      fact: 'works',
      set: 'front',
      ports: [
        {
          member: 'front.ring',
          label: 'front.ring',
          role: 'drives',
          pushed: 'anticlockwise',
          torque: ONE,
        },
        {
          member: 'main shaft',
          label: 'main shaft',
          role: 'driven',
          pushed: 'clockwise',
          torque: fraction(16, 11),
        },
        {
          member: 'sun shell',
          label: 'sun shell',
          role: 'reacts',
          pushed: 'anticlockwise',
          torque: fraction(5, 11),
        },
      ],
    },
    'The front ring drives the front set, which pushes the main shaft clockwise with 16/11 = 1.455 times input torque and the sun shell, which stands still, anticlockwise with 5/11 = 0.455 times input torque.',
    '«corona front» mueve el juego planetario «front», que empuja «main shaft» en sentido horario con 16/11 = 1,455 veces el par de entrada y «sun shell», que no gira, en sentido antihorario con 5/11 = 0,455 veces el par de entrada.',
  ],
  [
    {
      fact: 'works',
      set: 'mid',
      ports: [
        { member: 'a', label: 'a', role: 'drives', ...push },
        { member: 'b', label: 'b', role: 'drives', ...push },
        { member: 'c', label: 'c', role: 'driven', ...push },
      ],
    },
    'The a and b drive the mid set, which pushes the c anticlockwise with 16/11 = 1.455 times input torque.',
    '«a» y «b» mueven el juego planetario «mid», que empuja «c» en sentido antihorario con 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    { fact: 'works', set: 'mid', ports: [{ member: 'a', label: 'a', role: 'drives', ...push }] },
    'The a and the mid set push against one another.',
    '«a» y el juego planetario «mid» se empujan entre sí.',
  ],
  [
    { fact: 'meshes', pair: 'transfer', from: 'counter gear', to: 'layshaft', ...push },
    'Through the transfer gears the counter gear pushes the layshaft anticlockwise with 16/11 = 1.455 times input torque.',
    'Por los engranajes «transfer», «counter gear» empuja «layshaft» en sentido antihorario con 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    {
      fact: 'as one',
      set: 'front',
      ports: [
        { member: 'front.sun', label: 'front.sun', role: 'drives', ...push },
        { member: 'front.ring', label: 'drum', role: 'driven', ...push },
      ],
    },
    'In the front set the front sun and front ring (drum) turn as one: nothing moves on its pins.',
    'En el juego planetario «front» giran como una sola pieza «planetario front» y «corona front» («drum»): nada se mueve sobre sus ejes.',
  ],
  [
    { fact: 'holds', device: 'low sprag', kind: 'one-way', member: 'rear.carrier', ...push },
    'The rear carrier is pushed anticlockwise onto the low sprag, which hands it to the case: 16/11 = 1.455 times input torque.',
    'El esfuerzo empuja «portasatélites rear» en sentido antihorario contra «low sprag», que lo pasa a la carcasa: 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    {
      fact: 'holds',
      device: 'band',
      kind: 'band',
      member: 'drum',
      pushed: 'clockwise',
      torque: { from: ZERO, to: ONE },
    },
    'The drum is pushed clockwise; the band holds it to the case: 0 to 1 times input torque.',
    'El esfuerzo empuja «drum» en sentido horario; «band» retiene «drum» contra la carcasa: entre 0 y 1 veces el par de entrada.',
  ],
  [
    { fact: 'fixed', member: 'rear.ring', ...push },
    'The load pushes the rear ring anticlockwise; it is made fast to the case, which takes 16/11 = 1.455 times input torque.',
    'La carga empuja «corona rear» en sentido antihorario; forma una pieza con la carcasa, que recibe 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    { fact: 'fixed', member: 'case', ...push },
    'The case takes the reaction anticlockwise: 16/11 = 1.455 times input torque.',
    'La carcasa recibe la reacción en sentido antihorario: 16/11 = 1,455 veces el par de entrada.',
  ],
  [
    { fact: 'shares', devices: ['low brake', 'low sprag'] },
    'The low brake and low sprag share one reaction: how much of it each carries, nothing settles.',
    '«low brake» y «low sprag» comparten una reacción: nada determina cuánto lleva cada uno.',
  ],
  [
    { fact: 'sets share', sets: ['front', 'rear'] },
    'The front and rear sets share one load: how much each carries, and which way it pushes, nothing settles.',
    'Los juegos planetarios «front» y «rear» comparten una carga: nada determina cuánto lleva cada uno, ni en qué sentido empuja.',
  ],
  [
    { fact: 'sets share', sets: ['front'] },
    'The front set takes a share of the load: how much, and which way it pushes, nothing settles.',
    'El juego planetario «front» lleva una parte de la carga: nada determina cuánta, ni en qué sentido empuja.',
  ],
  [
    { fact: 'over-runs', device: 'roller', slip: fraction(5, 16) },
    'The roller over-runs at 5/16 = 0.313 times the speed of the input.',
    '«roller» gira libre a 5/16 = 0,313 veces la velocidad de la entrada.',
  ],
  [
    { fact: 'over-runs', device: 'roller', slip: ONE },
    'The roller over-runs at the speed of the input.',
    '«roller» gira libre a la velocidad de la entrada.',
  ],
  [
    { fact: 'over-runs', device: 'roller', slip: { from: ONE, to: null } },
    'The roller over-runs; nothing settles how fast.',
    '«roller» gira libre; nada determina a qué velocidad.',
  ],
  [
    { fact: 'idle', device: 'second brake', overRunning: 'second roller' },
    'The second brake is on but carries nothing, because the second roller over-runs: nothing pushes on it.',
    '«second brake» está aplicado, pero no lleva carga, porque «second roller» gira libre: nada lo empuja.',
  ],
  [
    { fact: 'idle', device: 'second brake' },
    'The second brake is on but carries nothing.',
    '«second brake» está aplicado, pero no lleva carga.',
  ],
  [
    { fact: 'result', member: 'main shaft', end: 'output', speed: fraction(-5, 11) },
    'For each turn of the input the output, the main shaft, turns anticlockwise 5/11 = 0.455 times: the ratio is −11/5 = −2.2.',
    'Por cada vuelta de la entrada, la salida, «main shaft», da 5/11 = 0,455 vueltas en sentido antihorario: la relación es −11/5 = −2,2.',
  ],
  [
    { fact: 'neutral', member: 'main shaft', end: 'output' },
    'Nothing makes the output, the main shaft, turn against its load: neutral.',
    'Nada hace girar la salida, «main shaft», contra su carga: punto muerto.',
  ],
  [
    { fact: 'free', members: ['second race'] },
    'The second race is free: nothing settles its speed.',
    'Queda libre «second race»: nada determina su velocidad.',
  ],
  [
    { fact: 'free', members: ['a', 'b'] },
    'The a and b are free: nothing settles their speeds.',
    'Quedan libres «a» y «b»: nada determina sus velocidades.',
  ],
  [
    { fact: 'recirculates', power: fraction(2, 5), sets: ['front', 'rear'] },
    'Power goes round in a circle through the front and rear sets: 2/5 = 0.4 times the power that comes in.',
    'En los juegos planetarios «front» y «rear» la potencia da vueltas en círculo: 2/5 = 0,4 veces la que entra.',
  ],
];

describe('a reason', () => {
  it.each(SAID)('%j', (fact, english, spanish) => {
    expect(sentences([turned, fact], voiceOf('en')).at(-1)).toBe(english);
    expect(sentences([turned, fact], voiceOf('es')).at(-1)).toBe(spanish);
  });
});

describe('the turned end', () => {
  const holds: Fact = { fact: 'holds', device: 'low brake', kind: 'brake', member: 'm', ...push };

  it('on coast gives speeds per turn of the output and torques of the input', () => {
    const facts: Fact[] = [
      coasted,
      holds,
      { fact: 'over-runs', device: 'sprag', slip: fraction(2) },
      { fact: 'result', member: 'turbine shaft', end: 'input', speed: fraction(27, 11) },
      { fact: 'engine braking', there: true, overRunning: [] },
    ];
    expect(sentences(facts)).toEqual([
      'The output, the main shaft, is turned clockwise, seen from the input end.',
      'The m is pushed anticlockwise; the low brake holds it to the case: 16/11 = 1.455 times input torque.',
      'The sprag over-runs at 2 times the speed of the output.',
      'For each turn of the output the input, the turbine shaft, turns clockwise 27/11 = 2.455 times: the ratio is 27/11 = 2.455.',
      'On coast the train turns the engine: there is engine braking.',
    ]);
  });

  it('says why there is no engine braking', () => {
    const none = (overRunning: string[]) => {
      return sentences([coasted, { fact: 'engine braking', there: false, overRunning }]).at(-1);
    };
    expect(none(['a'])).toBe(
      'The a over-runs, so the engine is not turned: there is no engine braking.',
    );
    expect(none(['a', 'b'])).toBe(
      'The a and b over-run, so the engine is not turned: there is no engine braking.',
    );
    expect(none([])).toBe('On coast nothing turns the engine: there is no engine braking.');
  });

  it('that is barred gives torques of itself, and no word on who stands still', () => {
    const works: Fact = {
      fact: 'works',
      set: 's',
      ports: [
        { member: 'a', label: 'a', role: 'drives', ...push },
        { member: 'b', label: 'b', role: 'reacts', ...push },
      ],
    };
    const end: Fact = { fact: 'tied up', member: 'main shaft', end: 'output', way: 'clockwise' };
    expect(sentences([coasted, works, end]).slice(1)).toEqual([
      'The a drives the s set, which pushes the b anticlockwise with 16/11 = 1.455 times output torque.',
      'The output, the main shaft, cannot be turned clockwise: the train is tied up.',
    ]);
  });

  it('on a hill rolls back or does not', () => {
    const back: Fact = { ...coasted, way: 'anticlockwise' } as Fact;
    expect(sentences([back, { fact: 'rolls', toward: 'reverse', held: null }]).at(-1)).toBe(
      'With the input free, the train rolls back.',
    );
    expect(sentences([back, { fact: 'rolls', toward: 'reverse', held: 'crank' }]).at(-1)).toBe(
      'Even with the crank held, the train rolls back.',
    );
    // A gear that drives in reverse is rolled the other way: forward.
    expect(sentences([back, { fact: 'rolls', toward: 'forward', held: null }]).at(-1)).toBe(
      'With the input free, the train rolls forward.',
    );
    const barred: Fact = {
      fact: 'tied up',
      member: 'main shaft',
      end: 'output',
      way: 'anticlockwise',
      rolled: 'reverse',
    };
    expect(sentences([back, barred]).at(-1)).toBe(
      'The output, the main shaft, cannot be turned anticlockwise: the train does not roll back.',
    );
  });

  it('is a hand at the bench', () => {
    const checked: Fact = {
      fact: 'checked',
      held: ['main shaft'],
      turned: 'crank',
      way: 'clockwise',
      turns: false,
    };
    expect(
      sentences([
        checked,
        holds,
        { fact: 'held by hand', member: 'main shaft', pushed: 'clockwise', torque: ONE },
      ]),
    ).toEqual([
      'With the main shaft held, the crank locks clockwise, seen from the input end.',
      'The m is pushed anticlockwise; the low brake holds it to the case: 16/11 = 1.455 times the torque of your hand.',
      'The main shaft is pushed clockwise against the hand that holds it: the torque of your hand.',
    ]);
    const free: Fact = { ...checked, held: [], turns: true };
    expect(
      sentences([
        free,
        { fact: 'moves', member: 'a', speed: fraction(-1, 2) },
        { fact: 'moves', member: 'b', speed: ZERO },
      ]),
    ).toEqual([
      'With nothing held, the crank turns clockwise, seen from the input end.',
      'The a turns anticlockwise 1/2 = 0.5 times for each turn of your hand.',
      'The b stands still.',
    ]);
  });

  it('may be several that are given', () => {
    const given: Fact[] = [
      { fact: 'given', member: 'engine', speed: fraction(1000) },
      { fact: 'given', member: 'motor', speed: ZERO },
    ];
    expect(
      sentences([
        ...given,
        holds,
        { fact: 'result', member: 'wheels', end: 'output', speed: ZERO },
      ]),
    ).toEqual([
      'The engine is turned clockwise at 1000, seen from the input end.',
      'The motor is held still.',
      'The m is pushed anticlockwise; the low brake holds it to the case: 16/11 = 1.455 times the torque at the first given speed.',
      'The output, the wheels, then stands still.',
    ]);
  });
});
