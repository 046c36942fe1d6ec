export { readXlsx } from "./read";
export { writeXlsx, type PictureMaker } from "./write";
