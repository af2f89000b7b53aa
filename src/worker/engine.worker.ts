import { answerRequest } from "./answerRequest.ts";
import type { EngineRequest } from "./EngineMessage.ts";

self.addEventListener("message", (event: MessageEvent<EngineRequest>) => {
  self.postMessage(answerRequest(event.data));
});
