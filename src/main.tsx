// First, so that the rooms' own rules come after what all share.
import "./ui/tokens.css";
import "./ui/font.css";
import "./ui/base.css";
import "./app.css";
import { createRoot } from "react-dom/client";
import { App } from "./App.tsx";
import { startPage } from "./startPage.ts";
import { trials } from "./store/trials/useTrials.ts";
import { startTrialWorker } from "./worker/startTrialWorker.ts";
import { startWorker } from "./worker/startWorker.ts";

startPage();
trials.connect(startTrialWorker);
// The type is part of the file, but browsers unpack it aside: a page drawn before it is there jumps when it comes.
void document.fonts
  .load('1em "Atkinson Hyperlegible Next Variable"')
  .finally(() => createRoot(document.getElementById("root")!).render(<App makeWorker={startWorker} />));
