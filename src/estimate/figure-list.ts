import { type Label } from "./fields";

/** A figure of the estimate sheet: a number, a text, or "" where it shows nothing. */
export type Figure = number | string;

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
  figure("post_circle", "Across the posts (post circle)", "Entre postes (círculo)", "ft", "feet"),
  figure("outside_size", "Outside of the fence", "Por fuera", "ft", "feet"),
  figure("posts", "Posts around", "Postes alrededor", "posts", "whole"),
  figure("bay", "Bay, post center to post center", "Vano entre centros", "ft", "feet"),
  figure("bay_fewer", "Bay with one post fewer", "Vano con un poste menos", "ft", "feet"),
  figure("bay_more", "Bay with one post more", "Vano con un poste más", "ft", "feet"),
  figure("rail_stock_length", "Length of rail stock", "Largo de la pieza usada", "ft", "feet"),
  figure("kick_stock_length", "Length of kick board stock", "Largo de la tabla al pie", "ft", "feet"),
  figure("line_post_in", "Line post, actual width", "Poste de línea, ancho real", "in", "inches"),
  figure("gate_post_in", "Gate post, actual width", "Poste de puerta, ancho real", "in", "inches"),
  figure("post_depth", "Depth of the posts", "Profundidad de postes", "ft", "feet"),
  figure("post_length", "Length of the posts, least", "Largo mínimo de postes", "ft", "feet"),
  figure("post_bought", "Posts are bought in", "Postes comprados de", "ft", "feet"),
  figure("line_hole", "Hole of a line post, across", "Hoyo de poste de línea", "in", "inches"),
  figure("gate_hole", "Hole of a gate post, across", "Hoyo de poste de puerta", "in", "inches"),
  figure("hole_depth", "Depth of the holes, gravel in", "Profundidad de hoyos", "in", "inches"),
  figure(
    "built_length",
    "Length, left side, to centers",
    "Largo, lado izquierdo, entre centros",
    "ft",
    "feet",
  ),
  figure("built_width", "Width, far end, to centers", "Ancho, fondo, entre centros", "ft", "feet"),
  figure("right_side", "Right side, pin to pin", "Lado derecho, entre pasadores", "ft", "feet"),
  figure("near_end", "Near end, pin to pin", "Frente, entre pasadores", "ft", "feet"),
  figure("length_over", "Longer than asked (shorter: neg.)", "Largo de más (de menos: neg.)", "in", "inches"),
  figure("width_over", "Wider than asked (narrower: neg.)", "Ancho de más (de menos: neg.)", "in", "inches"),
  figure("built_radius", "Corner radius, to post centers", "Radio de esquina, a centros", "ft", "feet"),
  figure("clear_length", "Length inside clear", "Largo libre por dentro", "ft", "feet"),
  figure("clear_width", "Width inside clear", "Ancho libre por dentro", "ft", "feet"),
  figure("outside_length", "Length outside", "Largo por fuera", "ft", "feet"),
  figure("outside_width", "Width outside", "Ancho por fuera", "ft", "feet"),
  figure(
    "diagonal_1",
    "Diagonal, near left to far right",
    "Diagonal, frente izq. a fondo der.",
    "ft",
    "feet",
  ),
  figure(
    "diagonal_2",
    "Diagonal, far left to near right",
    "Diagonal, fondo izq. a frente der.",
    "ft",
    "feet",
  ),
  figure("diagonal_asked", "Diagonal of the size asked for", "Diagonal de la medida pedida", "ft", "feet"),
  figure("panels_left", "Panels on the left side", "Paneles del lado izquierdo", "panels", "whole"),
  figure("panels_far", "Panels on the far end", "Paneles del fondo", "panels", "whole"),
  figure("panels_right", "Panels on the right side", "Paneles del lado derecho", "panels", "whole"),
  figure("panels_near", "Panels on the near end", "Paneles del frente", "panels", "whole"),
  figure("bay_longest", "Longest bay, to post centers", "Vano mayor, entre centros", "ft", "feet"),
  figure("bays_left", "Bays on the left side", "Vanos del lado izquierdo", "bays", "whole"),
  figure("bays_far", "Bays on the far end", "Vanos del fondo", "bays", "whole"),
  figure("bays_right", "Bays on the right side", "Vanos del lado derecho", "bays", "whole"),
  figure("bays_near", "Bays on the near end", "Vanos del frente", "bays", "whole"),
  figure("bays_arcs", "Bays on the corner arcs", "Vanos de las esquinas", "bays", "whole"),
  figure("base_need", "Base needed, loose", "Base necesaria, suelta", "cu yd", "yards"),
  figure("base_delivered", "Base delivered", "Base entregada", "cu yd", "yards"),
  figure("base_depth_settled", "Depth it gives, compacted", "Profundidad, compactada", "in", "inches"),
  figure("sand_need", "Sand needed, loose", "Arena necesaria, suelta", "cu yd", "yards"),
  figure("sand_delivered", "Sand delivered", "Arena entregada", "cu yd", "yards"),
  figure("sand_over", "Over the need (short: negative)", "Sobre lo necesario", "%", "percent"),
  figure("depth_loose", "Depth it gives, loose", "Profundidad, suelta", "in", "inches"),
  figure("depth_settled", "Depth it gives, settled", "Profundidad, asentada", "in", "inches"),
  figure("direct", "All lines", "Todas las partidas", "$", "money"),
  figure("burden_amount", "Labor burden", "Cargas sociales", "$", "money"),
  figure("tax_amount", "Tax on cost", "Impuesto sobre el costo", "$", "money"),
  figure("contingency_amount", "Contingency", "Imprevistos", "$", "money"),
  figure("overhead_amount", "Overhead", "Gastos generales", "$", "money"),
  figure("markup_amount", "Markup", "Recargo", "$", "money"),
  figure("profit_amount", "Profit", "Ganancia", "$", "money"),
  figure("adjustment", "To the least charge and rounded", "Al mínimo y redondeo", "$", "money"),
  figure("sales_tax_amount", "Tax on the price", "Impuesto sobre el precio", "$", "money"),
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
