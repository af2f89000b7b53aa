import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { type LinePoint, meter_ohm } from "./lineOver.ts";

/** Readings closer than this are one reading on a meter. */
const oneReading = 0.05;

/** What the meter at the rig tells of the antenna, and what it hides, at one frequency; sentences. */
export function lineWords(point: LinePoint, line_ohm: number): string[] {
  const { frequency_MHz, swrOnLine, swrAtRig, matchedLoss_dB, lineLoss_dB } = point;
  const at = `At ${megahertz(frequency_MHz)} MHz`;
  const extra = lineLoss_dB - matchedLoss_dB;
  const said: string[] = [];
  if (line_ohm !== meter_ohm)
    said.push(
      `${at} a ${meter_ohm} Ω meter at the rig shows SWR ${figure(swrAtRig, 2)}; on the ${figure(line_ohm, 0)} Ω cable the SWR is ${figure(swrOnLine, 2)} at its far end. With a cable that is not ${meter_ohm} Ω the reading also depends on its length.`,
    );
  else if (swrOnLine - swrAtRig < oneReading)
    said.push(`${at} the meter at the rig shows SWR ${figure(swrAtRig, 2)}: what it is at the far end, near enough.`);
  else
    said.push(
      `${at} the meter at the rig shows SWR ${figure(swrAtRig, 2)}, and at the far end it is ${figure(swrOnLine, 2)}. The meter flatters: what comes back to it has lost ${figure(matchedLoss_dB, 1)} dB on the way out and as much on the way back.`,
    );
  said.push(
    `Matched, this length loses ${figure(matchedLoss_dB, 2)} dB; the standing wave ${extra < 0.005 ? "adds nothing that could be measured" : `adds ${figure(extra, 2)} dB`}, ${figure(lineLoss_dB, 2)} dB in all: of 100 W at the rig ${figure(100 * point.efficiency, 0)} W reach the antenna.`,
  );
  return said;
}
