import type { Ring } from './plate.ts';

/**
 * The force on a turning piston of the oil that turns with it, where nothing balances it: at a
 * radius r the oil, which begins at `oilFromMm` (a diameter), is at ρω²(r² − r0²)/2 by its own
 * whirl (any text on fluids: a liquid that turns like a solid); over the ring that is
 * ρω²π/4 · (ro² − ri²) · (ro² + ri² − 2r0²). To be believed for a full chamber that turns as
 * one with its oil; a check ball or a balance dam takes all or most of it away.
 */
export function oilHeadN(
  { outerMm, innerMm }: Ring,
  oilFromMm: number,
  speedRpm: number,
  densityKgPerM3 = USUAL_DENSITY_KG_PER_M3,
): number {
  const [outer, inner, from] = [outerMm, innerMm, oilFromMm].map((mm) => (mm / 2000) ** 2) as [
    number,
    number,
    number,
  ];
  const radiansPerS = (speedRpm * Math.PI) / 30;
  const whirl = densityKgPerM3 * radiansPerS ** 2;
  return whirl * (Math.PI / 4) * (outer - inner) * (outer + inner - 2 * from);
}

// Transmission fluid when warm; common practice, no source.
const USUAL_DENSITY_KG_PER_M3 = 850;
