import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { firstTrain } from './scripts/firsttrain.mjs';
import { ourTrains } from './scripts/ourtrains.mjs';
import { messagesLater } from './scripts/messages.mjs';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

// What the first view needs; the end views and the lever diagram come later.
const FIRST = new RegExp(
  [
    'src/engine/(linear|train|motion|proof|reckon|flow)/',
    'src/telling/voice/(?!es[.]ts)',
    // Of sentences, those of a train that turns: what is measured and written down is told in other rooms.
    'src/telling/narrative/(?!gaps|judged|jobnote|measuring|records|failure|firststart|part|step|mistake|' +
      'stop|check|suspicion|lessons|triage|sign|stripping|building|refused|bands|preload|cause|coast|' +
      'packs|oneway|fastening)',
    'src/telling/(scene|stickdiagram)/',
    'src/page/(words|rooms|study)/(?!faulty)',
    'node_modules/(preact|@preact|intl-messageformat|@formatjs)/',
  ].join('|'),
  'u',
);

/** The screen: static files for any web host, under any path, that work without a network. */
export default defineConfig({
  root: here('src/doors/web'),
  base: './',
  build: {
    outDir: '../../../dist/web',
    emptyOutDir: true,
    target: 'es2023',
    // No script stands in the page, so the page allows none.
    // Of a room that comes later its styles are told ahead; its scripts, which tell one another, lie at hand
    // offline, and a list of them all would be in the first view.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files) => files.filter((file) => file.endsWith('.css')),
    },
    manifest: 'chunks.json',
    // The worker that serves the page offline takes longest to build; that is known.
    rolldownOptions: {
      checks: { pluginTimings: false },
      output: {
        // What the first view needs comes in few files: each costs a slow machine a wait.
        codeSplitting: {
          groups: [
            {
              name: 'engine',
              test: FIRST,
            },
          ],
        },
      },
    },
    license: { fileName: 'THIRD-PARTY.md' },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [
    messagesLater,
    ourTrains(here('trains')),
    firstTrain(here('trains/kestrel-three-speed.train.yaml')),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      workbox: { clientsClaim: true, globPatterns: ['**/*.{js,css,html,svg,png,webmanifest}'] },
      manifest: {
        name: 'Holdturn',
        short_name: 'Holdturn',
        description: 'How planetary gear trains turn, and why.',
        display: 'standalone',
        start_url: './',
        background_color: '#f6f4ee',
        theme_color: '#f6f4ee',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
    }),
  ],
});
