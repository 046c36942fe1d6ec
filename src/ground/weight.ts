/** Short tons in a cubic yard of dry sand, at 100 lb a cubic foot; damp sand runs 1.4 to 1.5: the pit knows its own. */
export const DRY_SAND_TONS = 1.35;

/** Short tons in a cubic yard of crushed stone with its fines, loose, at 104 lb a cubic foot: memory; the quarry knows its own. */
export const BASE_STONE_TONS = 1.4;

/** The short tons that so many cubic yards weigh. */
export const tons = (yards: number, tonsPerYard = DRY_SAND_TONS) => yards * tonsPerYard;

/** The cubic yards a truck carries: what its body holds or what its payload (short tons) allows, whichever is less. */
export const truckYards = (body: number, payload: number, tonsPerYard = DRY_SAND_TONS) =>
  Math.min(body, payload / tonsPerYard);
