import { type Ticket } from "../../../src/estimate/settle-up";
import { ticketColumns, ticketRows } from "../../../src/sheets/documents/tickets";
import { type SheetPlan } from "../../../src/sheets/plan";
import { type Cell } from "../../../src/units/cell";

/** A ticket log with these tickets written into it from its first row on. */
export function withTickets(log: SheetPlan, tickets: readonly Ticket[]): SheetPlan {
  const typed = new Map<string, Cell>();
  tickets.forEach((ticket, k) => {
    for (const part of ["item", "quantity", "unit", "amount", "invoice"] as const)
      typed.set(`${ticketRows.first + k},${ticketColumns[part]}`, ticket[part] === "" ? null : ticket[part]);
  });
  return {
    ...log,
    cells: log.cells.map((cell) => {
      const value = typed.get(`${cell.row},${cell.column}`);
      return value === undefined ? cell : { ...cell, says: { kind: "constant" as const, value } };
    }),
  };
}
