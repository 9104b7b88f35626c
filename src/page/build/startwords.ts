import type { StartStep } from '../../shop/firststart/index.ts';
import { spoken } from '../words/index.ts';

interface StartWords {
  readonly title: Readonly<Record<StartStep['does'], string>>;
  readonly text: Readonly<Record<StartStep['does'], string>>;
  /** What can hurt there. */
  readonly danger: Readonly<Record<NonNullable<StartStep['danger']>, string>>;
}

/** The first start in words: common practice, no source. */
export const startWords = spoken<StartWords>({
  en: {
    title: {
      cooler: 'Cooler flushed',
      converter: 'Converter filled and home',
      fill: 'Fluid before it turns',
      prime: 'Prime at idle',
      pressure: 'Pressure before load',
      ranges: 'Each range at idle',
      leaks: 'Leaks',
      level: 'Level, warm',
      drive: 'A gentle first drive',
      after: 'After the drive',
    },
    text: {
      cooler:
        'Before the unit goes in: flush the cooler and its lines both ways until they run clean, and see that they flow freely. What the old unit shed is in there; a cooler that does not come clean is replaced.',
      converter:
        'Put fluid into the converter, turn it on until it drops home, and measure from it to the face that it is bolted to, as the maker says. It must turn freely before a bolt is tightened: one that is not home breaks the pump at the first start.',
      fill: 'Put in fluid of the maker’s kind: most of what the unit takes, not all. The rest goes in once the pump has filled the converter and the cooler.',
      prime:
        'Chocks at the wheels, park, the parking brake on. Start, and let it idle; top it up at once as the level falls. Switch off if the pump howls.',
      pressure:
        'A gauge at the line pressure port before the first start. At idle, in park and in neutral, there must be pressure within seconds: none means switch off, and no range is engaged. Compare it with the maker’s figures.',
      ranges:
        'Pressure good: both brakes on, at idle, the lever slowly through every range, a few seconds in each. Read the pressure and how long each takes to engage; one that is late or harsh is found now.',
      leaks:
        'Look at the pan, the cooler lines, the output seals and the converter housing: with the engine off, or from where nothing can turn.',
      level:
        'At the temperature and in the range that the maker says, read the level and correct it. Clear what the control unit has learned, where the maker says so; read its codes.',
      drive:
        'Quiet road, light throttle, no kickdown: every gear up and down, then coast. Read ratio and slip in each gear, temperature, codes. Stop at the first flare, slip or bind: go on, and what was built is burnt.',
      after:
        'Leaks, level and codes once more; look at the fluid for metal or foam. Write down the pressures and what the drive was like. Tell the driver what to come back with, and when the level is looked at again.',
    },
    danger: {
      oil: 'Hot fluid burns, and so do the pan and the cooler lines: let it cool, or wear long gloves and a face shield.',
      car: 'The car can start to move: chocks, both brakes, nobody in front or behind. Exhaust goes outside.',
      wheels:
        'Wheels that turn on a hoist: a hoist or stands that the car’s maker allows, nobody under it, no loose sleeves, and the speed low; one wheel that is held makes the other run at double speed.',
      stall:
        'No stall test on a fresh unit unless its maker asks for one: never on low pressure, with all wheels chocked and both brakes on, 5 seconds at most, then idle in neutral. Some makers forbid it.',
    },
  },
  es: {
    title: {
      cooler: 'Enfriador lavado',
      converter: 'Convertidor lleno y en su sitio',
      fill: 'Aceite antes de que gire',
      prime: 'Cebar al ralentí',
      pressure: 'Presión antes de carga',
      ranges: 'Cada posición al ralentí',
      leaks: 'Fugas',
      level: 'Nivel, en caliente',
      drive: 'Un primer recorrido suave',
      after: 'Después del recorrido',
    },
    text: {
      cooler:
        'Antes de montar la unidad: lave el enfriador y sus tubos en los dos sentidos hasta que salga limpio, y vea que el aceite pasa libre. Ahí está lo que soltó la unidad vieja; un enfriador que no queda limpio se cambia.',
      converter:
        'Ponga aceite en el convertidor, gírelo hasta que caiga en su sitio y mida hasta la cara donde se atornilla, como diga el fabricante. Tiene que girar libre antes de apretar un tornillo: si no está en su sitio, rompe la bomba en el primer arranque.',
      fill: 'Ponga aceite del tipo del fabricante: casi todo lo que lleva la unidad, no todo. El resto entra cuando la bomba haya llenado el convertidor y el enfriador.',
      prime:
        'Calzos en las ruedas, estacionamiento, freno de mano puesto. Arranque y deje el motor al ralentí; complete enseguida según baja el nivel. Apague si la bomba aúlla.',
      pressure:
        'Un manómetro en la toma de presión de línea antes del primer arranque. Al ralentí, en estacionamiento y en punto muerto, tiene que haber presión en segundos: si no la hay, apague y no ponga ninguna posición. Compárela con los datos del fabricante.',
      ranges:
        'Con buena presión: los dos frenos puestos, al ralentí, la palanca despacio por todas las posiciones, unos segundos en cada una. Lea la presión y cuánto tarda cada una en entrar; la que llega tarde o brusca se encuentra ahora.',
      leaks:
        'Mire el cárter, los tubos del enfriador, los retenes de salida y la campana del convertidor: con el motor apagado, o desde donde nada pueda girar.',
      level:
        'A la temperatura y en la posición que diga el fabricante, lea el nivel y corríjalo. Borre lo que aprendió la unidad de control, donde el fabricante lo diga; lea sus códigos.',
      drive:
        'Camino tranquilo, poco acelerador, sin pisar a fondo: todas las marchas arriba y abajo, y luego en retención. Lea la relación y el patinaje en cada marcha, la temperatura, los códigos. Pare a la primera subida de vueltas, patinaje o bloqueo: si sigue, se quema lo que armó.',
      after:
        'Otra vez fugas, nivel y códigos; mire si el aceite trae metal o espuma. Anote las presiones y cómo fue el recorrido. Diga al conductor con qué debe volver, y cuándo se mira otra vez el nivel.',
    },
    danger: {
      oil: 'El aceite caliente quema, y también el cárter y los tubos del enfriador: deje que se enfríe, o lleve guantes largos y careta.',
      car: 'El coche puede echar a andar: calzos, los dos frenos, nadie delante ni detrás. El escape, hacia fuera.',
      wheels:
        'Ruedas que giran en el elevador: un elevador o soportes que permita el fabricante del coche, nadie debajo, sin mangas sueltas y a poca velocidad; una rueda frenada hace girar la otra al doble.',
      stall:
        'Sin prueba de calado en una unidad recién armada, salvo que su fabricante la pida: nunca con presión baja, con todas las ruedas calzadas y los dos frenos puestos, 5 segundos como mucho, y luego al ralentí en punto muerto. Algunos fabricantes la prohíben.',
    },
  },
});
