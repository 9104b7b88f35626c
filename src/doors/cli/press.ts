import fs from 'node:fs';
import type { NodeCompiler, NodeError } from '@myriaddreamin/typst-ts-node-compiler';
import type { Printed } from '../../command/machine/index.ts';

/**
 * Typesets Typst source text as a PDF with its structure tagged. Throws Node's MODULE_NOT_FOUND
 * where the typesetter is not installed, and what the typesetter says of wrong source.
 */
export function press(source: string): Printed {
  typesetter ??= install();
  const made = typesetter.compile({ mainFileContent: source });
  const { result } = made;
  if (!result) throw new Error(`not typeset: ${complaint(typesetter, made.takeError())}`);
  const pages = result.numOfPages;
  try {
    return { pdf: typesetter.pdf(result, { pdfStandard: 'ua-1' }), pages, readable: true };
  } catch {
    return { pdf: typesetter.pdf(result, {}), pages, readable: false };
  }
}

let typesetter: NodeCompiler | undefined;

// The package holds a native program, which cannot be inside the one file of the command: it is
// asked for when something is to be printed.
function install(): NodeCompiler {
  const { createRequire } = process.getBuiltinModule('node:module');
  const from = createRequire(import.meta.url);
  const { NodeCompiler: Typesetter } = from('@myriaddreamin/typst-ts-node-compiler') as {
    NodeCompiler: typeof NodeCompiler;
  };
  const faces = FACES.map((face) => {
    return fs.readFileSync(from.resolve(`@expo-google-fonts/source-sans-3/${face}`));
  });
  return Typesetter.create({ fontArgs: [{ fontBlobs: faces }] });
}

const FACES = [
  '400Regular/SourceSans3_400Regular.ttf',
  '400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
  '600SemiBold/SourceSans3_600SemiBold.ttf',
  '700Bold/SourceSans3_700Bold.ttf',
];

function complaint(from: NodeCompiler, error: NodeError | null): string {
  return error
    ? from
        .fetchDiagnostics(error)
        .map((one) => JSON.stringify(one))
        .join('; ')
    : '';
}
