/** The column heads of a table of items to buy, by which a filled-in one is read again. */
export const itemHeads = {
  item: "Item",
  words: "Specification",
  quantity: "Quantity",
  unit: "Unit",
  price: "Unit price",
  lead: "Lead time",
  available: "Available",
  amount: "Amount",
  taxed: "Tax",
} as const;

/** What price requests and purchase orders say, and what reading them again can refuse. */
export const purchaseWords = {
  request: "Price request",
  fillIn:
    "Please write the unit price, the lead time and what is in stock into the boxes, and send this sheet back. A different size or make: write it in place of ours.",
  writePrice: "Write a price of 0 or more, without words: 123.50.",
  items: "Items",
  delivery: "Delivery",
  yours: "For you to fill in",
  specs: "What the specifications say",
  requestFooter: "Request for prices only: no order.",
  order: "Purchase order",
  orderFooter: "Write our job number on every ticket and invoice.",
  onTickets: "Write this job number on every ticket, delivery note and invoice: ",
  shipTo: "Ship to",
  lines: "All lines",
  freight: "Delivery",
  salesTax: "Sales tax",
  total: "Total of this order",
  terms: "Terms",
  usualTerms:
    "No substitutes and no change of price without our word. A ticket signed on site is counted by us, not accepted as to quality. Deliver in the window above; call the site phone an hour ahead.",
  signers: ["Ordered by", "Accepted by the supplier"],
  day: "Date",
  noHeads:
    'This is no filled-in price request: no row holds the heads "Item" and "Unit price" beside one another.',
  noLines: "Below its heads this price request has no line with an item.",
  nothingPriced: "No line of this price request has a price yet.",
  notMoney: (item: string, written: string) =>
    `${item}: "${written}" is no price. Write an amount of 0 or more, such as 123.50.`,
  notAmount: (item: string, written: string) => `${item}: "${written}" is no quantity.`,
  noItem: (row: number) => `Row ${row}: a price without an item.`,
  noPrice: (item: string) => `${item}: no price was filled in.`,
  changedUnit: (item: string, ours: string, theirs: string) =>
    `${item}: the unit is "${theirs}", where ours is "${ours}".`,
  nothingToBuy: "These estimates buy nothing yet: no line has a quantity.",
  nothingPicked: "Tick at least one item to ask a price for.",
} as const;
