import { useEffect, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import type { Bench } from '../bench/index.ts';

interface Props {
  readonly bench: Bench;
}

/** Describing a train, by questions or by its text; fetched when it is first shown. */
export function Describe({ bench }: Props) {
  const [found, take] = useState<{ readonly Sheet: ComponentType<Props> }>();
  useEffect(() => {
    void import('./describe.tsx').then((come) => take({ Sheet: come.DescribeSheet }));
  }, []);
  return found ? <found.Sheet bench={bench} /> : <div style={{ minBlockSize: '60vh' }} />;
}
