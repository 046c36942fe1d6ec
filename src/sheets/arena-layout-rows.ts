import { type Label } from "../estimate/fields";
import { ahead, distance, type Point } from "../geometry/point";
import { alongAndAcross } from "../geometry/rounded-outline";
import { type ArenaLayoutData, type LaidArenaStake } from "./arena-layout-data";
import { arenaLabels, sideLabels } from "./arena-layout-words";
import { put } from "./estimate-cells";
import { call, cell, minus, pen, plus, text, times, type Term } from "./expression";
import { labels } from "./layout-messages";
import { columns } from "./layout-places";
import { asSetCell, heightCells, length, ruled } from "./layout-rows";
import { type PlanCell } from "./plan";

/** Where an arena's rows have what a round pen's have not. */
export const places = { along: columns.radius, across: columns.chord, chord: columns.tie1, tie: columns.tie2, on: columns.angle } as const; // prettier-ignore

/** The two header rows of the stakes; the lower one names the units. */
export function headerCells(row: number, { language }: ArenaLayoutData): PlanCell[] {
  const head = (column: number, label: Label, units: string[]) => [
    {
      ...put(row, column, label[language], "crewHead"),
      ...(units.length > 1 ? { across: units.length } : {}),
    },
    ...units.map((unit, k) => put(row + 1, column + k, unit, "crewSubhead")),
  ];
  const feet = [labels.feetAndInches[language], labels.feet[language]];
  const inches = [labels.inches[language]];
  return [
    ...head(columns.stake, labels.stake, [""]),
    ...head(places.along, arenaLabels.along, feet),
    ...head(places.across, arenaLabels.across, feet),
    ...head(places.chord, labels.chord, feet),
    ...head(places.tie, labels.tie1, feet),
    ...head(columns.kind, labels.kind, [""]),
    ...head(columns.side, labels.side, [""]),
    ...head(columns.hole, labels.hole, inches),
    ...head(columns.holeDepth, labels.holeDepth, inches),
    ...head(places.on, arenaLabels.on, [""]),
    ...head(columns.running, labels.running, feet),
    ...head(columns.shot, labels.shot, [labels.feet[language]]),
    ...head(columns.cutOrFill, labels.cutOrFill, [labels.feet[language]]),
    ...head(columns.asSet, labels.asSet, [""]),
    { ...put(row, columns.bearing, labels.coordinates[language], "crewHead"), across: 3 },
    ...(["stakeBearing", "east", "north", "east", "north"] as const).map((name, k) =>
      put(row + 1, columns.bearing + k, labels[name][language], "crewSubhead"),
    ),
    { ...put(row, columns.siteEast, labels.fromMark[language], "crewHead"), across: 2 },
  ];
}

/** What is staked beside the fence: corners that are rounded off, arc centers, reference stakes. */
export function stakedBeside({ corners, arcCenters, references, language, apart }: ArenaLayoutData) {
  const word = (label: Label) => label[language];
  return [
    ...(apart ? corners.map((at, k) => ({ name: `C${k + 1}`, at, kind: word(labels.corner) })) : []),
    ...arcCenters.map((at, k) => ({ name: `P${k + 1}`, at, kind: word(labels["arc center"]) })),
    ...references.map(({ name, bearing, distance }) => ({
      name,
      at: ahead({ east: 0, north: 0 }, bearing, distance),
      kind: word(labels.reference),
    })),
  ];
}

/** One row a stake, the way back to the first one, and what is staked beside the fence. */
export function stakeCells(first: number, data: ArenaLayoutData, gradeRow: number): PlanCell[] {
  const { stakes } = data;
  const back = first + stakes.length;
  const chord = cell({ row: first, column: places.chord + 1 });
  const above = cell({ row: back - 1, column: columns.running + 1 });
  return [
    ...stakes.flatMap((stake, k) => stakeRow(first + k, first, stake, data, gradeRow)),
    ...ruled(back, [
      put(back, columns.stake, "→ 1", "crewStake"),
      ...length(back, places.chord, chord),
      ...length(back, columns.running, plus(above, chord)),
    ]),
    ...stakedBeside(data).flatMap(({ name, at, kind }, k) => {
      const row = back + 1 + k;
      return ruled(row, [
        put(row, columns.stake, name, "crewStake"),
        ...offsets(row, at, data),
        ...length(row, places.tie, distance(stakes[0], at)),
        put(row, columns.kind, kind, "crewWord"),
        ...placeCells(row, at, data),
      ]);
    }),
  ];
}

/** Where a place lies from the center, and where the gate came first from the crew's mark. */
const placeCells = (row: number, { east, north }: Point, { center }: ArenaLayoutData): PlanCell[] => [
  put(row, columns.east, east, "place"),
  put(row, columns.north, north, "place"),
  ...(center
    ? [
        put(row, columns.siteEast, east + center.east, "place"),
        put(row, columns.siteNorth, north + center.north, "place"),
      ]
    : []),
];

/** How far a place lies along the left side from the near left corner, and to the right of it. */
function offsets(row: number, at: Point, { corners, heading }: ArenaLayoutData): PlanCell[] {
  const { along, across } = alongAndAcross(corners[0], at, heading);
  return [...offset(row, places.along, tidy(along)), ...offset(row, places.across, tidy(across))];
}

/** A length that is under 0 where a place lies before the near left corner: in feet and inches after a minus. */
function offset(row: number, column: number, feet: number): PlanCell[] {
  if (feet >= 0) return length(row, column, feet);
  const inches = text("-", pen("FEET_INCHES", times(-1, cell({ row, column: column + 1 }))));
  return [put(row, column, inches, "crewLength"), put(row, column + 1, feet, "crewDecimal")];
}

/** A length whose rounding leaves less than a millionth of a foot is none. */
const tidy = (feet: number) => (Math.abs(feet) < 1e-6 ? 0 : feet);

function stakeRow(
  row: number,
  first: number,
  stake: LaidArenaStake,
  data: ArenaLayoutData,
  gradeRow: number,
): PlanCell[] {
  const { language, corners, heading } = data;
  const middle = alongAndAcross(corners[0], { east: 0, north: 0 }, heading).across;
  const offMiddle = call("ABS", minus(cell({ row, column: places.across + 1 }), middle));
  const above = cell({ row: row - 1, column: columns.running + 1 });
  const orBlank = (inches?: number): Term => inches ?? "";
  return [
    put(row, columns.stake, stake.stake, "crewStake"),
    ...offsets(row, stake, data),
    ...length(row, places.chord, stake.chord),
    ...length(row, places.tie, stake.tie1),
    put(row, columns.kind, labels[stake.kind][language], "crewWord"),
    put(row, columns.side, stake.sides.map((side) => labels[side][language]).join(", "), "crewWord"),
    put(row, columns.hole, orBlank(stake.hole?.diameter), "crewInches"),
    put(row, columns.holeDepth, orBlank(stake.hole?.depth), "crewInches"),
    put(row, places.on, (stake.side ? sideLabels[stake.side] : arenaLabels.arc)[language], "crewWord"),
    ...length(row, columns.running, row === first ? 0 : plus(above, cell({ row, column: places.chord + 1 }))),
    ...heightCells(row, offMiddle, gradeRow, language),
    asSetCell(row, stake, language),
    put(row, columns.bearing, stake.bearing, "place"),
    ...placeCells(row, stake, data),
  ];
}
