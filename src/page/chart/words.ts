import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'The chart',
    gear: 'gear',
    applied: 'applied',
    ratio: 'input turns for one of the output',
    braking: 'engine braking',
    drive: 'under power',
    coast: 'on coast',
    brakes: 'yes',
    runsFree: 'no',
    does: {
      on: 'on, and carries the load',
      idle: 'on, and carries nothing',
      holding: 'holds',
      'over-running': 'over-runs',
      off: 'off, and carries nothing',
    },
    opens: 'A mark opens its reason.',
    torque: (torque: string) => `It puts ${torque} times the input torque on its first member.`,
    slip: (slip: string) => `Its members turn against each other at ${slip}.`,
    every: 'Every combination of the devices',
    drivesOnly: 'only those that drive',
    tooMany: (most: number) =>
      `Every combination is worked out for up to ${most} friction devices.`,
  },
  es: {
    title: 'La tabla',
    gear: 'marcha',
    applied: 'aplicados',
    ratio: 'vueltas de entrada por una de salida',
    braking: 'freno motor',
    drive: 'en tracción',
    coast: 'en retención',
    brakes: 'sí',
    runsFree: 'no',
    does: {
      on: 'aplicado, y lleva la carga',
      idle: 'aplicado, y no lleva nada',
      holding: 'retiene',
      'over-running': 'gira libre',
      off: 'suelto, y no lleva nada',
    },
    opens: 'Una marca abre su razón.',
    torque: (torque: string) => `Pone ${torque} veces el par de entrada en su primer miembro.`,
    slip: (slip: string) => `Sus miembros giran uno contra otro a ${slip}.`,
    every: 'Todas las combinaciones de los elementos',
    drivesOnly: 'solo las que transmiten',
    tooMany: (most: number) =>
      `Se calculan todas las combinaciones hasta ${most} elementos de fricción.`,
  },
});
