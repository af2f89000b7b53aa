import type { Plan } from "../../contract.ts";
import type { Problem } from "../../result.ts";
import type { Known, TrialAsk } from "../trial/Trial.ts";
import type { layingReader } from "./layingReader.ts";
import { type Lay, layKey } from "./layingsToTry.ts";
import type { RadialLaying } from "./RadialsPicture.ts";
import { withRadialLaying } from "./withRadialLaying.ts";

/** Asks and answers by laying, each made once. */
export class LayingTable {
  readonly #asks = new Map<string, { lay: Lay; laid: Plan; ask: TrialAsk }>();
  readonly #read = new Map<string, RadialLaying>();
  readonly #plan: Plan;
  readonly #reader: ReturnType<typeof layingReader>;

  constructor(plan: Plan, reader: ReturnType<typeof layingReader>) {
    this.#plan = plan;
    this.#reader = reader;
  }

  get count(): number {
    return this.#read.size;
  }

  /** Those of some layings that are solved, and the asks for those that are neither solved nor refused. */
  look(lays: readonly Lay[], known: Known): { solved: RadialLaying[]; asks: TrialAsk[] } {
    const solved: RadialLaying[] = [];
    const asks: TrialAsk[] = [];
    for (const [key, lay] of new Map(lays.map((one) => [layKey(one), one]))) {
      const entry = this.#entry(key, lay);
      const answer = known(entry.ask);
      if (!answer) {
        asks.push(entry.ask);
        continue;
      }
      if (!answer.ok) continue;
      if (!this.#read.has(key)) this.#read.set(key, this.#reader.read(entry.laid, lay, answer.value));
      const reading = this.#read.get(key)!;
      if (Number.isFinite(reading.forward_dBi)) solved.push(reading);
    }
    return { solved, asks };
  }

  refused(known: Known): Problem[] {
    return [...this.#asks.values()].flatMap(({ ask }) => {
      const answer = known(ask);
      return answer && !answer.ok ? answer.problems : [];
    });
  }

  #entry(key: string, lay: Lay) {
    const kept = this.#asks.get(key);
    if (kept) return kept;
    const laid = withRadialLaying(this.#plan, lay);
    const entry = { lay, laid, ask: this.#reader.ask(laid) };
    this.#asks.set(key, entry);
    return entry;
  }
}
