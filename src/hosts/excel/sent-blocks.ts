import { type Area, type Spot } from "./areas";

/** What a block takes in bytes beside its cells, about: its place, and the request to write it. */
const costOfBlock = 300;

/** A rectangle whose cells are sent together, and those of its cells that say something. */
export interface SentBlock<Cell extends Spot> {
  area: Area;
  cells: Cell[];
}

/**
 * Cells as rectangles that take few bytes to send, when each blank place within one takes so many: parted along rows or
 * columns for as long as that saves more than a further block costs.
 */
export function sentBlocks<Cell extends Spot>(cells: Cell[], blank: number): SentBlock<Cell>[] {
  if (cells.length === 0) return [];
  const costOf = (part: Cell[]) => costOfBlock + blank * (placesIn(around(part)) - part.length);
  let best: { parts: [Cell[], Cell[]]; cost: number } | undefined;
  for (const side of ["row", "column"] as const) {
    const sorted = [...cells].sort((a, b) => a[side] - b[side]);
    for (let k = 1; k < sorted.length; k++) {
      if (sorted[k][side] === sorted[k - 1][side]) continue;
      const parts: [Cell[], Cell[]] = [sorted.slice(0, k), sorted.slice(k)];
      const cost = costOf(parts[0]) + costOf(parts[1]);
      if (cost < (best?.cost ?? costOf(cells))) best = { parts, cost };
    }
  }
  return best ? best.parts.flatMap((part) => sentBlocks(part, blank)) : [{ area: around(cells), cells }];
}

const placesIn = ({ top, left, bottom, right }: Area) => (bottom - top + 1) * (right - left + 1);

function around(cells: Spot[]): Area {
  const rows = cells.map(({ row }) => row);
  const columns = cells.map(({ column }) => column);
  return {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
}
