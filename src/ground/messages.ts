import { feetInches } from "../units/feet-inches";
import { INCHES_PER_FOOT } from "../units/conversion";

const inInches = (inches: number) => feetInches(inches / INCHES_PER_FOOT, 16, "words");

/** What this room can say to a user. */
export const messages = {
  noTruck: "no truck is offered: give the size of at least one truck, and where there are prices, its price",
  tooManyWays: "too many ways to load these: give fewer or rounder truck sizes",
  noAuger: (least: number, most: number) =>
    `the hole must be at least ${inInches(least)} wide and the widest auger is ${inInches(most)}: list a wider one, or take less all round`,
  postTooWide: (shape: "round" | "square", across: number, hole: number) =>
    `post_in: this post is ${inInches(across)} ${shape === "round" ? "across" : "from corner to corner"}, too wide for a hole of ${inInches(hole)}`,
  gravelTooDeep: (depth: number) => `gravel_in: at most the depth of the hole, ${inInches(depth)}`,
};
