/** What this room can say to a user. */
export const messages = {
  noTruck: "no truck is offered: give the size of at least one truck, and where there are prices, its price",
  tooManyWays: "too many ways to load these: give fewer or rounder truck sizes",
};
