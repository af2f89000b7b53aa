/** Small drawings, all on an 18 × 18 grid, all hidden from screen readers: the control beside them has the words. */
const drawings = {
  undo: "M7 4 3.5 7.5 7 11M4 7.5h6.5a4 4 0 0 1 0 8H8",
  redo: "M11 4l3.5 3.5L11 11M14 7.5H7.5a4 4 0 0 0 0 8H10",
  down: "M5 7l4 4 4-4",
  cross: "M5 5l8 8M13 5l-8 8",
  plus: "M9 3.5v11M3.5 9h11",
  minus: "M3.5 9h11",
  pin: "M9 10.5V16M6 2.5h6M7 2.5v4.2L4.5 10.5h9L11 6.7V2.5",
  open: "M2.5 14.5v-10h4l1.5 2h7.5v8z",
  save: "M9 3v8.5M5.5 8.5 9 12l3.5-3.5M3 15.5h12",
  link: "M7.5 10.5l3-3M8 5.5l1.3-1.3a3.2 3.2 0 0 1 4.5 4.5L12.5 10M10 12.5l-1.3 1.3a3.2 3.2 0 0 1-4.5-4.5L5.5 8",
  fresh: "M4.5 2.5h6l3 3v10h-9zM10.5 2.5v3h3",
  earlier: "M9 5v4.2l2.8 1.7M3.2 9a5.8 5.8 0 1 1 1.7 4.1M3 5.5V9h3.5",
  info: "M9 8.2v4.3M9 5.6v.1M9 15.8a6.8 6.8 0 1 1 0-13.6 6.8 6.8 0 0 1 0 13.6z",
  warn: "M9 3 16 15H2zM9 7.5v3.5M9 13v.1",
  check: "M4 9.5 7.5 13 14 5.5",
  wait: "M5 3h8M5 15h8M6 3c0 3.5 6 3.5 6 6s-6 2.5-6 6M12 3c0 3.5-6 3.5-6 6s6 2.5 6 6",
  page: "M9 11.5a2.5 2.5 0 1 0 0-5 2.5 2.5 0 0 0 0 5zM9 2v2M9 14v2M2 9h2M14 9h2M4 4l1.4 1.4M12.6 12.6 14 14M4 14l1.4-1.4M12.6 5.4 14 4",
} as const;

export type IconName = keyof typeof drawings;

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 18 18" aria-hidden="true">
      <path d={drawings[name]} />
    </svg>
  );
}
