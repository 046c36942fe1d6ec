import { type Label } from "./fields";

/** How a figure is shown. */
export type FigureKind = "feet" | "area" | "yards" | "percent" | "inches" | "money" | "whole";

/** One computed figure of the estimate that stands by itself, outside the lines. */
export interface FigureField {
  key: string;
  label: Label;
  unit: string;
  kind: FigureKind;
}

const figure = (key: string, en: string, es: string, unit: string, kind: FigureKind): FigureField => ({
  key,
  label: { en, es },
  unit,
  kind,
});

/** The list of those figures, in the order of the estimate sheet. */
export const figureFields: readonly FigureField[] = [
  figure("pin_circle", "Across the pins (pin circle)", "Entre pasadores (círculo)", "ft", "feet"),
  figure("inside_clear", "Inside clear", "Libre por dentro", "ft", "feet"),
  figure("distance_around", "Distance around", "Perímetro", "ft", "feet"),
  figure("area", "Area inside", "Área interior", "sq ft", "area"),
  figure("one_under", "Pin circle with one panel fewer", "Con un panel menos", "ft", "feet"),
  figure("one_over", "Pin circle with one panel more", "Con un panel más", "ft", "feet"),
  figure("sand_need", "Sand needed, loose", "Arena necesaria, suelta", "cu yd", "yards"),
  figure("sand_delivered", "Sand delivered", "Arena entregada", "cu yd", "yards"),
  figure("sand_over", "Over the need (short: negative)", "Sobre lo necesario", "%", "percent"),
  figure("depth_loose", "Depth it gives, loose", "Profundidad, suelta", "in", "inches"),
  figure("depth_settled", "Depth it gives, settled", "Profundidad, asentada", "in", "inches"),
  figure("direct", "All lines", "Todas las partidas", "$", "money"),
  figure("tax_amount", "Tax", "Impuesto", "$", "money"),
  figure("contingency_amount", "Contingency", "Imprevistos", "$", "money"),
  figure("overhead_amount", "Overhead", "Gastos generales", "$", "money"),
  figure("profit_amount", "Profit", "Ganancia", "$", "money"),
  figure("total", "Total", "Total", "$", "money"),
  figure("per_foot", "Per foot of fence", "Por pie de cerca", "$/ft", "money"),
  figure("per_square_foot", "Per square foot", "Por pie cuadrado", "$/sq ft", "money"),
  figure("budget_left", "Left of the budget (over it: negative)", "Queda del presupuesto", "$", "money"),
];

/** The figure of that key. */
export function figureField(key: string): FigureField {
  const found = figureFields.find((one) => one.key === key);
  if (!found) throw new Error(`No figure ${key}.`);
  return found;
}
