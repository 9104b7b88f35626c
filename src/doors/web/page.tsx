import type { Bench } from './bench/index.ts';
import { Desk } from './desk/index.ts';
import { Gears } from './gears/index.ts';
import { Why } from './why/index.ts';

/** The sheet: the train large in the middle, words beside what they speak of. */
export function Page({ bench }: { readonly bench: Bench }) {
  return (
    <>
      <header>
        <h1>{bench.file.train.value?.name}</h1>
        <Desk bench={bench} />
      </header>
      <main>
        <Gears bench={bench} />
        <Why build={bench.right} />
      </main>
    </>
  );
}
