import type { RefObject } from "react";
import type { TrialRun } from "../../../store/trials/TrialRun.ts";
import { fileName } from "../../../text/fileName.ts";
import { download } from "../../../ui/download.ts";
import { Icon } from "../../../ui/Icon.tsx";
import { Menu } from "../../../ui/Menu.tsx";
import { say } from "../../../ui/say.ts";
import { aboutRun } from "./aboutRun.ts";
import { csvText } from "./csvText.ts";
import { pngFile } from "./pngFile.ts";
import { svgFile } from "./svgFile.ts";

/** A result as a table: heads with their units, rows of numbers. */
export interface SavedTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly (number | string | null)[])[];
}

interface Props {
  readonly run: TrialRun;
  /** What the trial is called. */
  readonly name: string;
  readonly table: () => SavedTable;
  /** Where the drawings are that can be saved. */
  readonly drawings: RefObject<HTMLElement | null>;
}

/** Saves a result: its figures, and each of its drawings. */
export function SaveMenu({ run, name, table, drawings }: Props) {
  const named = (ending: string) => fileName(`${run.plan.title} ${name}`, ending);
  const keep = (file: string, content: BlobPart, type: string) => {
    download(file, content, type);
    say(`Saved as ${file}.`);
  };
  const items = () => {
    const found = [...(drawings.current?.querySelectorAll<SVGSVGElement>("svg.cf-svg") ?? [])];
    return [
      {
        label: "Figures as CSV",
        onChoose: () => {
          const { heads, rows } = table();
          keep(named(".csv"), csvText(aboutRun(run, name), heads, rows), "text/csv");
        },
      },
      ...found.flatMap((drawing, i) => {
        const title = drawing.closest("figure")?.querySelector(".cf-title")?.textContent ?? name;
        const file = (ending: string) => fileName(`${run.plan.title} ${title}`, ending);
        const about = `${aboutRun(run, title).join(". ")}.`;
        return [
          {
            label: `${title}, SVG`,
            startsGroup: i === 0,
            onChoose: () => keep(file(".svg"), svgFile(drawing, about), "image/svg+xml"),
          },
          {
            label: `${title}, PNG`,
            onChoose: () => {
              pngFile(svgFile(drawing, about), drawing.clientWidth, drawing.clientHeight).then(
                (picture) => keep(file(".png"), picture, "image/png"),
                (error: unknown) =>
                  say(`Not saved: ${error instanceof Error ? error.message : String(error)}.`, { isTrouble: true }),
              );
            },
          },
        ];
      }),
    ];
  };
  return (
    <Menu
      end
      label={
        <>
          <Icon name="save" />
          Save
        </>
      }
      title={`Save ${name}`}
      items={items}
    />
  );
}
