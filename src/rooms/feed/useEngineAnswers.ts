import { useEffect, useMemo, useRef, useState } from "react";
import type { EngineAnswer, EngineAsk } from "../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { type EngineClient, engineClient } from "../../worker/engineClient.ts";

/** Some hundred readouts of 30 kB each are a few megabytes. */
const mostKept = 300;

export type AnswerTo = (ask: EngineAsk) => EngineAnswer | undefined;

export interface EngineAnswers {
  /** The answer to a question, if it is known; another function when another answer has come. */
  readonly answerTo: AnswerTo;
  /** How many of the questions are answered. */
  readonly done: number;
  readonly total: number;
  /** How much of the one that is being answered is done, 0..1, where it tells. */
  readonly part: number;
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
  const client = useRef<EngineClient>(null);
  const asked = useRef<string | null>(null);
  const [known, setKnown] = useState<ReadonlyMap<string, EngineAnswer>>(new Map());
  const [fault, setFault] = useState<string | null>(null);
  const [told, setTold] = useState<{ readonly key: string; readonly part: number } | null>(null);

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

  const keys = useMemo(() => asks.map(keyOf), [asks]);
  useEffect(() => {
    const engine = client.current;
    if (!engine || fault !== null) return;
    const list = new Set(keys);
    engine.outdate((ask) => list.has(keyOf(ask)));
    if (asked.current !== null && !list.has(asked.current)) asked.current = null;
    const next = keys.find((key) => !known.has(key));
    if (next === undefined || asked.current === next) return;
    asked.current = next;
    engine.ask(
      JSON.parse(next) as EngineAsk,
      (answer) => {
        if (asked.current === next) asked.current = null;
        setTold(null);
        setKnown((before) => new Map([...before, [next, answer] as const].slice(-mostKept)));
      },
      (part) => asked.current === next && setTold({ key: next, part }),
    );
  }, [keys, known, fault]);

  const answerTo = useMemo(() => (ask: EngineAsk) => known.get(keyOf(ask)), [known]);
  return {
    answerTo,
    done: keys.filter((key) => known.has(key)).length,
    total: keys.length,
    part: told !== null && keys.includes(told.key) ? told.part : 0,
    fault,
    retry: () => setFault(null),
  };
}
