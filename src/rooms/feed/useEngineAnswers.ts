import { useEffect, useRef, useState } from "react";
import { recentlyUsed } from "../../store/recentlyUsed.ts";
import type { EngineAnswer, EngineAsk } from "../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { type EngineClient, engineClient } from "../../worker/engineClient.ts";

/** Some hundred readouts of 30 kB each are a few megabytes. */
const mostKept = 300;

export interface EngineAnswers {
  /** The answer to a question, if it is known. */
  answerTo(ask: EngineAsk): EngineAnswer | undefined;
  /** Asked of the engine next, one after the other; questions that are answered cost nothing. */
  readonly done: number;
  readonly total: number;
  /** The engine broke: what to tell the person. */
  readonly fault: string | null;
  /** Starts the engine again after a fault. */
  retry(): void;
}

const keyOf = (ask: EngineAsk) => JSON.stringify(ask);

/**
 * Answers to a list of questions from a worker of its own, which is started with the first and ended with the component.
 * They are asked in the order given, one at a time; when the list changes, those no longer on it are not asked, and
 * what is known stays known.
 */
export function useEngineAnswers(makeWorker: MakeWorker, asks: readonly EngineAsk[]): EngineAnswers {
  const [kept] = useState(() => recentlyUsed<EngineAnswer>(mostKept));
  const client = useRef<EngineClient>(null);
  const asked = useRef<string | null>(null);
  const [, setCount] = useState(0);
  const [fault, setFault] = useState<string | null>(null);

  useEffect(() => {
    const started = engineClient(makeWorker, (message) => {
      asked.current = null;
      setFault(message);
    });
    client.current = started;
    return () => {
      started.stop();
      client.current = null;
      asked.current = null;
    };
  }, [makeWorker]);

  const keys = asks.map(keyOf);
  const next = asks.findIndex((_, i) => !kept.has(keys[i]!));
  const nextKey = next < 0 ? null : keys[next]!;
  const wanted = keys.join("\n");
  // Looked at again whenever an answer has come or the list has changed.
  useEffect(() => {
    const engine = client.current;
    if (!engine || fault !== null) return;
    const list = new Set(wanted.split("\n"));
    engine.outdate((ask) => list.has(keyOf(ask)));
    if (asked.current !== null && !list.has(asked.current)) asked.current = null;
    if (nextKey === null || asked.current === nextKey) return;
    asked.current = nextKey;
    engine.ask(JSON.parse(nextKey) as EngineAsk, (answer) => {
      kept.set(nextKey, answer);
      if (asked.current === nextKey) asked.current = null;
      setCount((count) => count + 1);
    });
  }, [wanted, nextKey, fault, kept]);

  return {
    answerTo: (ask) => kept.get(keyOf(ask)),
    done: keys.filter((key) => kept.has(key)).length,
    total: keys.length,
    fault,
    retry: () => setFault(null),
  };
}
