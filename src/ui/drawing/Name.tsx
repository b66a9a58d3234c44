/** The name of a part of the drawing, and a note beside it. */
interface NameProps {
  readonly x: number;
  readonly y: number;
  readonly bold: string;
  readonly note: string;
}

export function Name({ x, y, bold, note }: NameProps) {
  return (
    <text x={x} y={y}>
      <tspan className="bold">{bold}</tspan> {note}
    </text>
  );
}
