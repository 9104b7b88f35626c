import fs from 'node:fs';
import path from 'node:path';
import { engine } from './firsttrain.mjs';

/**
 * Our trains as a new page offers them, the simplest first: by how many sets and gear pairs they
 * have, then by their devices. `import { trains } from 'virtual:our-trains'`.
 */
export function ourTrains(folder) {
  const name = 'virtual:our-trains';
  return {
    name: 'our-trains',
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    async load(id) {
      if (id !== `\0${name}`) return undefined;
      const { readTrain } = await engine();
      const files = fs.readdirSync(folder).filter((file) => file.endsWith('.train.yaml'));
      const trains = files.map((file) => {
        this.addWatchFile(path.join(folder, file));
        const { train } = readTrain(fs.readFileSync(path.join(folder, file), 'utf8'));
        const { name: called, about, sets, pairs, devices, languages = {} } = train;
        const meshes = sets.length + pairs.length;
        return {
          file: file.replace('.train.yaml', ''),
          name: called,
          about,
          languages: Object.fromEntries(Object.entries(languages).map(withoutNames)),
          meshes,
          devices: devices.length,
        };
      });
      trains.sort((a, b) => a.meshes - b.meshes || a.devices - b.devices);
      return `export const trains = ${JSON.stringify(trains)};\n`;
    },
  };
}

// The names of its things come with the train itself.
function withoutNames([language, { name, about }]) {
  return [language, { name, about }];
}
