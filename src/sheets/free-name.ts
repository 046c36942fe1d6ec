/** The most characters that a sheet's name may have. */
const longest = 31;

/** The first of "Estimate", "Estimate 2", "Estimate 3", … that no sheet has, cut to what a name may have; capitals do not count. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  for (let place = 1; ; place++) {
    const number = place === 1 ? "" : ` ${place}`;
    const name = wanted.slice(0, longest - number.length) + number;
    if (!names.has(name.toLowerCase())) return name;
  }
}
