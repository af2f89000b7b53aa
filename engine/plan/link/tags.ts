/**
 * First byte of a packed value. Whole numbers 0 to 63 are `small` + number, known words are `word` + place in
 * `linkWords`; every other value is its tag and what stands beside it.
 */
export const tags = {
  null: 0,
  false: 1,
  true: 2,
  /** count of bytes, bytes of `textToBytes` */
  text: 3,
  /** m, then x + 512 (counts): the number m · 10^x; `negative` its opposite */
  decimal: 4,
  negative: 5,
  /** eight bytes, IEEE 754 double, high byte first */
  double: 6,
  /** count of items, items */
  list: 7,
  /** count of fields, then name and value of each; a name is a text or a word */
  fields: 8,
  /** n: the same as the n-th list or fields that ended before here */
  again: 9,
  small: 0x40,
  word: 0x80,
} as const;
