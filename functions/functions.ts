// Long for one file: the metadata generator and the saved workbooks know the functions by this file, and each is only its description and one call.
import { manyResults, oneResult } from "./host-values";

/**
 * Distance around a circle, in feet.
 * @customfunction CIRCUMFERENCE
 * @helpurl https://localhost:3000/help/circumference.html
 * @param {any[][]} diameter_ft Diameter, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 */
export function circumference(diameter_ft: any[][]): any[][] {
  return manyResults("CIRCUMFERENCE", diameter_ft);
}

/**
 * Area of a circle, in square feet.
 * @customfunction AREA
 * @helpurl https://localhost:3000/help/area.html
 * @param {any[][]} diameter_ft Diameter, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 */
export function area(diameter_ft: any[][]): any[][] {
  return manyResults("AREA", diameter_ft);
}

/**
 * Area of a rectangular arena with square or rounded corners, in square feet.
 * @customfunction ARENA_AREA
 * @helpurl https://localhost:3000/help/arena_area.html
 * @param {any} length_ft Length of the arena, ft or a text with a unit.
 * @param {any} width_ft Width of the arena, ft or a text with a unit.
 * @param {any} [corner_radius_ft] Radius of the corners, ft, at most half the shorter side. Default 0, square corners.
 */
export function arenaArea(length_ft: any, width_ft: any, corner_radius_ft?: any): any {
  return oneResult("ARENA_AREA", length_ft, width_ft, corner_radius_ft);
}

/**
 * Distance around a rectangular arena with square or rounded corners, in feet.
 * @customfunction ARENA_PERIMETER
 * @helpurl https://localhost:3000/help/arena_perimeter.html
 * @param {any} length_ft Length of the arena, ft or a text with a unit.
 * @param {any} width_ft Width of the arena, ft or a text with a unit.
 * @param {any} [corner_radius_ft] Radius of the corners, ft, at most half the shorter side. Default 0, square corners.
 */
export function arenaPerimeter(length_ft: any, width_ft: any, corner_radius_ft?: any): any {
  return oneResult("ARENA_PERIMETER", length_ft, width_ft, corner_radius_ft);
}

/**
 * Distance between opposite corners of a rectangle, in feet: the measure that squares an arena.
 * @customfunction DIAGONAL
 * @helpurl https://localhost:3000/help/diagonal.html
 * @param {any} length_ft Length of the arena, ft or a text with a unit.
 * @param {any} width_ft Width of the arena, ft or a text with a unit.
 */
export function diagonal(length_ft: any, width_ft: any): any {
  return oneResult("DIAGONAL", length_ft, width_ft);
}

/**
 * Inches that the far long side of a rectangle sits off square along itself: positive when diagonal 1 is the longer.
 * @customfunction OUT_OF_SQUARE
 * @helpurl https://localhost:3000/help/out_of_square.html
 * @param {any} length_ft Length as measured, ft or a text with a unit.
 * @param {any} width_ft Width as measured, ft or a text with a unit.
 * @param {any} diagonal_1_ft One diagonal as measured, ft or a text with a unit.
 * @param {any} diagonal_2_ft The other diagonal as measured, ft or a text with a unit.
 */
export function outOfSquare(length_ft: any, width_ft: any, diagonal_1_ft: any, diagonal_2_ft: any): any {
  return oneResult("OUT_OF_SQUARE", length_ft, width_ft, diagonal_1_ft, diagonal_2_ft);
}

/**
 * Whole panels that make a round pen beside its gates.
 * @customfunction PANELS
 * @helpurl https://localhost:3000/help/panels.html
 * @param {any[][]} diameter_ft Size of the pen, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 * @param {any} panel_ft Length of a panel pin to pin, ft or a text with a unit.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 * @param {any} [fit] nearest: distance around nearest to the circle. at least: fewest with that inside clear. at most: most with that pin circle. Default nearest.
 */
export function panels(
  diameter_ft: any[][],
  panel_ft: any,
  gates_ft?: any[][],
  pin_gap_in?: any,
  fit?: any,
): any[][] {
  return manyResults("PANELS", diameter_ft, panel_ft, gates_ft, pin_gap_in, fit);
}

/**
 * Diameter of the circle through the pins of a pen of straight panels and gates, in feet.
 * @customfunction PIN_CIRCLE
 * @helpurl https://localhost:3000/help/pin_circle.html
 * @param {any[][]} panels_ft Lengths of the panels pin to pin, ft. One cell or a range.
 * @param {any[][]} counts How many panels of each length: as many cells as panels_ft.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 */
export function pinCircle(panels_ft: any[][], counts: any[][], gates_ft?: any[][], pin_gap_in?: any): any {
  return oneResult("PIN_CIRCLE", panels_ft, counts, gates_ft, pin_gap_in);
}

/**
 * Twice the least distance from the center to the fence of a panel pen, in feet: what a horse has.
 * @customfunction INSIDE_CLEAR
 * @helpurl https://localhost:3000/help/inside_clear.html
 * @param {any[][]} panels_ft Lengths of the panels pin to pin, ft. One cell or a range.
 * @param {any[][]} counts How many panels of each length: as many cells as panels_ft.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 */
export function insideClear(panels_ft: any[][], counts: any[][], gates_ft?: any[][], pin_gap_in?: any): any {
  return oneResult("INSIDE_CLEAR", panels_ft, counts, gates_ft, pin_gap_in);
}

/**
 * Area inside the straight panels and gates of a pen, in square feet.
 * @customfunction INSIDE_AREA
 * @helpurl https://localhost:3000/help/inside_area.html
 * @param {any[][]} panels_ft Lengths of the panels pin to pin, ft. One cell or a range.
 * @param {any[][]} counts How many panels of each length: as many cells as panels_ft.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 */
export function insideArea(panels_ft: any[][], counts: any[][], gates_ft?: any[][], pin_gap_in?: any): any {
  return oneResult("INSIDE_AREA", panels_ft, counts, gates_ft, pin_gap_in);
}

/**
 * Panels of each length that together make a round pen beside its gates: nearest to a size or, with prices, cheapest.
 * @customfunction PANEL_MIX
 * @helpurl https://localhost:3000/help/panel_mix.html
 * @param {any} diameter_ft Size of the pen, ft or a text with a unit such as 60' or 18 m.
 * @param {any[][]} panels_ft Lengths of the panels pin to pin, ft or texts with a unit. One cell or a range.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 * @param {any[][]} [prices] Price of one panel of each length: as many cells as panels_ft; a blank one is not offered. Default none.
 * @param {any} [tolerance_ft] With prices, how far off the size may be, ft. Default 1.
 * @param {any} [fit] nearest: distance around nearest to the circle. at least: that inside clear. at most: that pin circle. Default nearest.
 * @param {any[][]} [stock] How many there are of each length: as many cells as panels_ft; blank is no limit, none is 0. Default no limit.
 */
export function panelMix(
  diameter_ft: any,
  panels_ft: any[][],
  gates_ft?: any[][],
  pin_gap_in?: any,
  prices?: any[][],
  tolerance_ft?: any,
  fit?: any,
  stock?: any[][],
): any[][] {
  return manyResults(
    "PANEL_MIX",
    diameter_ft,
    panels_ft,
    gates_ft,
    pin_gap_in,
    prices,
    tolerance_ft,
    fit,
    stock,
  );
}

/**
 * Posts of a round pen on its post circle, two of them for each gate.
 * @customfunction POSTS
 * @helpurl https://localhost:3000/help/posts.html
 * @param {any[][]} diameter_ft Diameter of the post circle, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 * @param {any} spacing_ft Most from one post center to the next along the chord, ft or a text with a unit, at most the diameter.
 * @param {any[][]} [gates_ft] Gates, ft: openings between gate-post faces, or center to center with gate_post_in 0. Blanks are skipped. Default none.
 * @param {any} [gate_post_in] Width of a gate post, inches or a text with a unit. Default 0.
 */
export function posts(
  diameter_ft: any[][],
  spacing_ft: any,
  gates_ft?: any[][],
  gate_post_in?: any,
): any[][] {
  return manyResults("POSTS", diameter_ft, spacing_ft, gates_ft, gate_post_in);
}

/**
 * The equal bay of a round pen from post center to post center along the chord, in feet.
 * @customfunction BAY
 * @helpurl https://localhost:3000/help/bay.html
 * @param {any[][]} diameter_ft Diameter of the post circle, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 * @param {any} spacing_ft Most from one post center to the next along the chord, ft or a text with a unit, at most the diameter.
 * @param {any[][]} [gates_ft] Gates, ft: openings between gate-post faces, or center to center with gate_post_in 0. Blanks are skipped. Default none.
 * @param {any} [gate_post_in] Width of a gate post, inches or a text with a unit. Default 0.
 */
export function bay(diameter_ft: any[][], spacing_ft: any, gates_ft?: any[][], gate_post_in?: any): any[][] {
  return manyResults("BAY", diameter_ft, spacing_ft, gates_ft, gate_post_in);
}

/**
 * Table of the stakes of a post pen, clockwise from the first gate: chord, ties, bearing and place, center at 0, 0.
 * @customfunction POST_LAYOUT
 * @helpurl https://localhost:3000/help/post_layout.html
 * @param {any} diameter_ft Diameter of the post circle, ft or a text with a unit such as 60' or 18 m.
 * @param {any} spacing_ft Most from one post center to the next along the chord, ft or a text with a unit, at most the diameter.
 * @param {any[][]} [gates_ft] Gates, ft: openings between gate-post faces, or center to center with gate_post_in 0. Blanks are skipped. Default none.
 * @param {any} [gate_post_in] Width of a gate post, inches or a text with a unit. Default 0.
 * @param {any} [bearing_deg] Bearing of the first gate's middle (no gate: of the first post) in degrees clockwise from north, from -360 to 360. Default 0.
 */
export function postLayout(
  diameter_ft: any,
  spacing_ft: any,
  gates_ft?: any[][],
  gate_post_in?: any,
  bearing_deg?: any,
): any[][] {
  return manyResults("POST_LAYOUT", diameter_ft, spacing_ft, gates_ft, gate_post_in, bearing_deg);
}

/**
 * Table of the stakes of a panel pen, clockwise from the first gate: chord, ties, bearing and place, center at 0, 0.
 * @customfunction PANEL_LAYOUT
 * @helpurl https://localhost:3000/help/panel_layout.html
 * @param {any[][]} panels_ft Lengths of the panels pin to pin, ft or texts with a unit, in the order they stand. One cell or a range.
 * @param {any[][]} counts How many of each length: as many cells as panels_ft.
 * @param {any[][]} [gates_ft] Gates pin to pin, ft. One cell or a range; blanks are skipped. Default none.
 * @param {any} [pin_gap_in] What a joint adds to each panel and gate, inches, from -12 to 12. Default 0.
 * @param {any} [bearing_deg] Bearing of the first gate's middle (no gate: of the first pin) in degrees clockwise from north, from -360 to 360. Default 0.
 */
export function panelLayout(
  panels_ft: any[][],
  counts: any[][],
  gates_ft?: any[][],
  pin_gap_in?: any,
  bearing_deg?: any,
): any[][] {
  return manyResults("PANEL_LAYOUT", panels_ft, counts, gates_ft, pin_gap_in, bearing_deg);
}

/**
 * Loose cubic yards to buy for the footing of a round pen.
 * @customfunction FOOTING
 * @helpurl https://localhost:3000/help/footing.html
 * @param {any[][]} diameter_ft Diameter of the pen, ft or a text with a unit such as 60' or 18 m. One cell or a range.
 * @param {any} depth_in Depth once settled, inches or a text with a unit such as 75 mm.
 * @param {any} [overrun_pct] Percent bought beyond the figured amount, 0 to 200. Default 0.
 * @param {any} [settle_pct] Percent that the layer sinks from loose to settled, 0 to 90. Default 0.
 */
export function footing(diameter_ft: any[][], depth_in: any, overrun_pct?: any, settle_pct?: any): any[][] {
  return manyResults("FOOTING", diameter_ft, depth_in, overrun_pct, settle_pct);
}

/**
 * Loose cubic yards to buy for a layer over any area.
 * @customfunction FILL
 * @helpurl https://localhost:3000/help/fill.html
 * @param {any[][]} area_sqft Area in square feet. One cell or a range.
 * @param {any} depth_in Depth once settled, inches or a text with a unit such as 75 mm.
 * @param {any} [overrun_pct] Percent bought beyond the figured amount, 0 to 200. Default 0.
 * @param {any} [settle_pct] Percent that the layer sinks from loose to settled, 0 to 90. Default 0.
 */
export function fill(area_sqft: any[][], depth_in: any, overrun_pct?: any, settle_pct?: any): any[][] {
  return manyResults("FILL", area_sqft, depth_in, overrun_pct, settle_pct);
}

/**
 * Inches of depth, loose, that so many cubic yards give over an area.
 * @customfunction DEPTH
 * @helpurl https://localhost:3000/help/depth.html
 * @param {any} cubic_yards Volume in cubic yards, 0 to 1000000.
 * @param {any} area_sqft Area in square feet.
 */
export function depth(cubic_yards: any, area_sqft: any): any {
  return oneResult("DEPTH", cubic_yards, area_sqft);
}

/**
 * Short tons that so many cubic yards weigh.
 * @customfunction TONS
 * @helpurl https://localhost:3000/help/tons.html
 * @param {any[][]} cubic_yards Volume in cubic yards, 0 to 1000000. One cell or a range.
 * @param {any} [tons_per_cy] Short tons in a cubic yard, 0.1 to 10. Default 1.35, dry sand; damp runs 1.4 to 1.5: ask the pit.
 */
export function tons(cubic_yards: any[][], tons_per_cy?: any): any[][] {
  return manyResults("TONS", cubic_yards, tons_per_cy);
}

/**
 * Loads of each size of truck that serve a need best: fewest or, with prices, cheapest.
 * @customfunction LOADS
 * @helpurl https://localhost:3000/help/loads.html
 * @param {any} cubic_yards The need in cubic yards, 0 to 1000000.
 * @param {any[][]} trucks_cy Sizes of the trucks in cubic yards, 0.01 to 200. One cell or a range.
 * @param {any} [short_pct] Percent of the need that may be missing, 0 to 50. Default 0.
 * @param {any[][]} [prices] Price a load of each truck: as many cells as trucks_cy; a blank one is not offered. Default none.
 */
export function loads(cubic_yards: any, trucks_cy: any[][], short_pct?: any, prices?: any[][]): any[][] {
  return manyResults("LOADS", cubic_yards, trucks_cy, short_pct, prices);
}

/**
 * Cubic yards that a truck carries, by the room in its body or by the weight it may load.
 * @customfunction TRUCK_YARDS
 * @helpurl https://localhost:3000/help/truck_yards.html
 * @param {any[][]} body_cy Room in the body in cubic yards, at most 200. One cell or a range.
 * @param {any} payload_tons Weight it may load in short tons, at most 200.
 * @param {any} [tons_per_cy] Short tons in a cubic yard, 0.1 to 10. Default 1.35, dry sand; damp runs 1.4 to 1.5: ask the pit.
 */
export function truckYards(body_cy: any[][], payload_tons: any, tons_per_cy?: any): any[][] {
  return manyResults("TRUCK_YARDS", body_cy, payload_tons, tons_per_cy);
}

/**
 * Cubic feet of concrete in one post hole, up to the ground and less the post.
 * @customfunction HOLE_CONCRETE
 * @helpurl https://localhost:3000/help/hole_concrete.html
 * @param {any} hole_in Diameter of the hole, inches or a text with a unit.
 * @param {any} depth_in Depth of the hole, inches or a text with a unit.
 * @param {any} [post_in] Diameter of the post, or its side if it is square, inches or a text with a unit. Default 0, no post.
 * @param {any} [post_shape] round or square. Default round.
 * @param {any} [gravel_in] Gravel under the post, inches or a text with a unit, at most the depth. Default 0.
 */
export function holeConcrete(
  hole_in: any,
  depth_in: any,
  post_in?: any,
  post_shape?: any,
  gravel_in?: any,
): any {
  return oneResult("HOLE_CONCRETE", hole_in, depth_in, post_in, post_shape, gravel_in);
}

/**
 * Whole bags of dry concrete mix for a volume.
 * @customfunction BAGS
 * @helpurl https://localhost:3000/help/bags.html
 * @param {any} cubic_feet Volume of concrete in cubic feet, 0 to 1000000.
 * @param {any} [bag_lb] Pounds in a bag, 1 to 5000. Default 80.
 * @param {any} [waste_pct] Percent lost on the way, bought on top, 0 to 100. Default 0.
 */
export function bags(cubic_feet: any, bag_lb?: any, waste_pct?: any): any {
  return oneResult("BAGS", cubic_feet, bag_lb, waste_pct);
}

/**
 * Decimal feet of a length in any notation.
 * @customfunction FEET
 * @helpurl https://localhost:3000/help/feet.html
 * @param {any[][]} length Feet, or a text such as 10' 6 1/2", 126 in, 18 m or 450 mm. One cell or a range.
 */
export function feet(length: any[][]): any[][] {
  return manyResults("FEET", length);
}

/**
 * A length as feet and inches, rounded to a part of an inch.
 * @customfunction FEET_INCHES
 * @helpurl https://localhost:3000/help/feet_inches.html
 * @param {any[][]} feet Length in ft or a text with a unit. One cell or a range.
 * @param {any} [denominator] Parts of an inch to round to, 1 to 64. Default 16.
 */
export function feetInches(feet: any[][], denominator?: any): any[][] {
  return manyResults("FEET_INCHES", feet, denominator);
}
