import type { TrialAsk } from "../../engine/index.ts";
import { answerRequest } from "./answerRequest.ts";
import type { EngineAsk, EngineReply, EngineRequest } from "./EngineMessage.ts";
import { kernelShelf } from "./kernelShelf.ts";
import type { LeadMessage, SolveMessage, WarmMessage } from "./trial/TrialMessage.ts";
import { takesTables } from "./trial/tablesKey.ts";
import { trialRole } from "./trial/trialRole.ts";

/** The page is told of progress this often at most. */
const pace_ms = 100;
let shelf: Promise<void> | undefined;

/** What is kept from earlier visits, fetched once, where an ask has use for it. */
const readyFor = (asks: readonly TrialAsk[]) => {
  if (!asks.some((ask) => takesTables(ask.plan))) return undefined;
  shelf ??= kernelShelf();
  return shelf;
};
const takeTrial = trialRole((report) => self.postMessage(report), readyFor);

self.addEventListener("message", ({ data }: MessageEvent<EngineRequest | LeadMessage | SolveMessage | WarmMessage>) => {
  if (!("ask" in data)) return takeTrial(data);
  if (!needsKernels(data.ask)) return answer(data);
  shelf ??= kernelShelf();
  void shelf.then(() => answer(data));
});

function answer(data: EngineRequest): void {
  const reply = (message: EngineReply) => self.postMessage(message);
  let told = performance.now();
  reply(
    answerRequest(data, (part) => {
      const now = performance.now();
      if (now - told < pace_ms) return;
      told = now;
      reply({ id: data.id, part });
    }),
  );
}

/** A preview must come at once and reads no tables. */
function needsKernels(ask: EngineAsk): boolean {
  const plans = ask.kind === "readouts" ? ask.plans : ["plan" in ask ? ask.plan : ask.request.plan];
  return plans.some((plan) => plan.ground.kind === "soil" && plan.soilModel === "full-wave");
}
