/**
 * Writes path data in hundredths of a sheet unit, relative and without a needless character:
 * an outline of a hundred teeth is long enough. Roundings do not add up: each step starts from
 * where the last one really ended.
 */
export class Pen {
  d = '';
  private x = 0;
  private y = 0;

  move(x: number, y: number): void {
    [this.x, this.y] = [hundredths(x), hundredths(y)];
    this.d += `M${pair(this.x, this.y)}`;
  }

  line(x: number, y: number): void {
    this.d += `l${this.step(x, y)}`;
    [this.x, this.y] = [hundredths(x), hundredths(y)];
  }

  /** A cubic curve by its two handles and its end. */
  curve(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    const steps = [this.step(x1, y1), this.step(x2, y2), this.step(x, y)];
    this.d += `c${joined(steps)}`;
    [this.x, this.y] = [hundredths(x), hundredths(y)];
  }

  /** A bend towards a corner and on to an end. */
  bend(corner: At, end: At): void {
    const steps = [this.step(corner.x, corner.y), this.step(end.x, end.y)];
    this.d += `q${joined(steps)}`;
    [this.x, this.y] = [hundredths(end.x), hundredths(end.y)];
  }

  /** A whole circle about the origin. */
  circle(radius: number): void {
    const r = text(hundredths(radius));
    this.move(0, -radius);
    this.d += `A${r} ${r} 0 1 1 0 ${r}A${r} ${r} 0 1 1 0-${r}Z`;
  }

  close(): void {
    this.d += 'Z';
  }

  private step(x: number, y: number): string {
    return pair(hundredths(x) - this.x, hundredths(y) - this.y);
  }
}

interface At {
  readonly x: number;
  readonly y: number;
}

// A minus parts numbers too.
function joined(steps: readonly string[]): string {
  return steps.join(' ').replaceAll(' -', '-');
}

function hundredths(value: number): number {
  return Math.round(value * 100);
}

function pair(x: number, y: number): string {
  return y < 0 ? `${text(x)}${text(y)}` : `${text(x)} ${text(y)}`;
}

function text(value: number): string {
  return `${value / 100}`.replace(/^(-?)0\./u, '$1.');
}
