import { awgDiameter_mm } from "../../../engine/index.ts";
import type { QuantityContext, QuantityKind } from "./QuantityKind.ts";
import { quantityTraits } from "./quantityTraits.ts";
import type { Token } from "./readTokens.ts";
import { shortenText } from "./shortenText.ts";
import type { Quantity } from "./unitMath.ts";
import { unitMath } from "./unitMath.ts";
import { unitWords } from "./unitWords.ts";
import { thickestGauge, thinnestGauge } from "./wireGauge.ts";

/** What a person can put right: the message says what and what to write instead. */
export class Unreadable extends Error {}

/** Reads one quantity from its tokens, once; the grammar stands in `parseQuantity.ts`. Throws `Unreadable`. */
export class QuantityReader {
  private readonly math = unitMath();
  private readonly tokens: readonly Token[];
  private readonly kind: QuantityKind;
  private readonly context: QuantityContext;
  private at = 0;
  private lastUnit: string | null = null;

  constructor(tokens: readonly Token[], kind: QuantityKind, context: QuantityContext) {
    this.tokens = tokens;
    this.kind = kind;
    this.context = context;
  }

  read(): number {
    const over = this.readPercent();
    if (over !== null) return over;
    const quantity = this.readSum();
    if (this.at < this.tokens.length)
      throw new Unreadable(`Could not make sense of what stands after “${this.spell(0, this.at)}”.`);
    const value = this.inKind(quantity);
    return this.kind === "bearing_deg" ? ((value % 360) + 360) % 360 : value;
  }

  private inKind(quantity: Quantity): number {
    const traits = quantityTraits[this.kind];
    if (traits.unit === null) {
      if (typeof quantity !== "number") throw new Unreadable(`No unit belongs here. Write ${traits.wanted}.`);
      if (this.kind === "count" && !Number.isInteger(quantity))
        throw new Unreadable(`${quantity} is not a whole number.`);
      return quantity;
    }
    if (typeof quantity !== "number") return quantity.toNumber(traits.unit);
    const bare = traits.bare[this.context.units]!;
    // Wire is bought by gauge where inches are used: a lone whole number is one.
    if (this.kind === "diameter_mm" && bare === "in" && this.tokens.length === 1 && Number.isInteger(quantity))
      return this.gauge(quantity);
    return asNumber(this.withUnit(quantity, bare), traits.unit);
  }

  /** "+5 %": so much longer than a named length. */
  private readPercent(): number | null {
    const last = this.tokens.at(-1);
    if (last?.kind !== "mark" || last.text !== "%") return null;
    const over = this.context.percentOver;
    if (!over) throw new Unreadable("A percentage means nothing here: there is no length to take it of.");
    const percent = new QuantityReader(this.tokens.slice(0, -1), "ratio", this.context).read();
    return over.value * (1 + percent / 100);
  }

  private readSum(): Quantity {
    let sum = this.readRun();
    for (;;) {
      if (this.take("+")) sum = this.math.add(sum, this.readRun());
      else if (this.take("-")) sum = this.math.subtract(sum, this.readRun());
      else return sum;
    }
  }

  private readRun(): Quantity {
    // A sign before a run is the sign of all of it: −1 ft 6 in is eighteen inches the other way.
    const isNegative = this.take("-");
    let run = this.readTerm();
    while (this.peek()?.kind === "number") {
      const before = this.lastUnit;
      if (before === null) throw new Unreadable(`Two numbers stand side by side in “${this.spell(0, this.at + 1)}”.`);
      const next = this.readTerm();
      // 33' 6 is 33 feet 6 inches.
      const part = typeof next === "number" && before === "ft" ? this.withUnit(next, "in") : next;
      run = this.math.add(run, part);
    }
    return isNegative ? this.math.multiply(-1, run) : run;
  }

  private readTerm(): Quantity {
    const gauge = this.readGauge();
    if (gauge !== null) return gauge;
    this.lastUnit = null;
    let term = this.readFactor();
    for (;;) {
      if (this.take("*")) term = this.math.multiply(term, this.readFactor());
      else if (this.take("/"))
        term = this.math.divide(term, this.peek()?.kind === "word" ? this.readUnit() : this.readFactor());
      else if (this.peek()?.kind === "word") term = this.math.multiply(term, this.readUnit());
      else return term;
    }
  }

  private readFactor(): Quantity {
    if (this.take("-")) return this.math.multiply(-1, this.readFactor());
    if (this.take("+")) return this.readFactor();
    const base = this.readPrimary();
    if (!this.take("^")) return base;
    const power = this.readFactor();
    if (typeof power !== "number") throw new Unreadable("A power has to be a bare number.");
    return this.math.pow(base, power);
  }

  private readPrimary(): Quantity {
    if (this.take("(")) {
      const inside = this.readSum();
      if (!this.take(")")) throw new Unreadable("A bracket is opened and not closed.");
      return inside;
    }
    const token = this.tokens[this.at];
    if (token?.kind !== "number")
      throw new Unreadable(
        token?.kind === "word" && !unitWords.has(token.text.toLowerCase())
          ? this.notAUnit(token.text)
          : `A number is missing${this.at > 0 ? ` after “${this.spell(0, this.at)}”` : ""}. Write ${quantityTraits[this.kind].wanted}.`,
      );
    this.at++;
    return token.value + this.readFraction(token.value);
  }

  /** The "1/2" of "6 1/2". */
  private readFraction(whole: number): number {
    const [top, slash, bottom] = this.tokens.slice(this.at, this.at + 3);
    if (top?.kind !== "number" || bottom?.kind !== "number" || slash?.kind !== "mark" || slash.text !== "/") return 0;
    const isFraction = Number.isInteger(whole) && Number.isInteger(top.value) && top.value < bottom.value;
    if (!isFraction) return 0;
    this.at += 3;
    return top.value / bottom.value;
  }

  /** 14 AWG, AWG 14, #14, 2/0 AWG. */
  private readGauge(): Quantity | null {
    const [a, b, c, d] = this.tokens.slice(this.at, this.at + 4);
    if (isGaugeWord(a) && b?.kind === "number") return this.gaugeAt(b.value, 2);
    if (a?.kind !== "number") return null;
    if (isGaugeWord(b)) return this.gaugeAt(a.value, 2);
    if (b?.kind === "mark" && b.text === "/" && c?.kind === "number" && c.value === 0 && isGaugeWord(d))
      return this.gaugeAt(1 - a.value, 4);
    return null;
  }

  private gaugeAt(gauge: number, tokens: number): Quantity {
    this.at += tokens;
    this.lastUnit = "AWG";
    return this.withUnit(this.gauge(gauge), "mm");
  }

  private gauge(gauge: number): number {
    if (!Number.isInteger(gauge) || gauge < thickestGauge || gauge > thinnestGauge)
      throw new Unreadable(`${gauge} is no wire gauge: they run from 4/0 to ${thinnestGauge} AWG.`);
    return awgDiameter_mm(gauge);
  }

  private readUnit(): Quantity {
    const token = this.tokens[this.at]!;
    const written = token.kind === "word" ? token.text : "";
    const unit = unitWords.get(written.toLowerCase());
    if (unit === undefined || unit === "AWG") throw new Unreadable(this.notAUnit(written));
    this.at++;
    this.lastUnit = unit;
    if (unit !== "wl") return this.math.of(1, unit);
    if (this.context.wavelength_m === undefined)
      throw new Unreadable("A wavelength has no length here: write metres or feet.");
    return this.math.of(this.context.wavelength_m, "m");
  }

  private withUnit(value: number, unit: string): Quantity {
    return this.math.of(value, unit);
  }

  private notAUnit(written: string): string {
    return `“${shortenText(written)}” is not a unit known here. Write ${quantityTraits[this.kind].wanted}.`;
  }

  private peek(): Token | undefined {
    return this.tokens[this.at];
  }

  private take(mark: string): boolean {
    const token = this.tokens[this.at];
    if (token?.kind !== "mark" || token.text !== mark) return false;
    this.at++;
    return true;
  }

  private spell(from: number, to: number): string {
    return shortenText(
      this.tokens
        .slice(from, to)
        .map((token) => (token.kind === "number" ? String(token.value) : token.text))
        .join(" "),
    );
  }
}

function isGaugeWord(token: Token | undefined): boolean {
  return token?.kind === "word" && unitWords.get(token.text.toLowerCase()) === "AWG";
}

function asNumber(quantity: Quantity, unit: string): number {
  return typeof quantity === "number" ? quantity : quantity.toNumber(unit);
}
