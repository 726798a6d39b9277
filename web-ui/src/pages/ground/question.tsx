/** A reading that does not fit is asked about once: equal tiles, and READ IT AGAIN. Nothing is corrected by itself. */
import { FOOT, INCH, rodText } from "../../grade";
import { Key } from "../../parts/keys";
import { length, signed } from "../../show";
import { sheet, unit } from "../../state";
import type { Outcome, Perhaps, Question, TakeReading } from "../../wire";
import { t } from "../../words_later";
import { chooseMark, rod } from "./at";
import { SendRow } from "./send_row";

type Asked = Extract<Outcome, { kind: "asked" }>;

interface QuestionProps {
  command: TakeReading;
  asked: Asked;
  onSend: (command: TakeReading) => void;
  onAgain: () => void;
}

export function QuestionCard({ command, asked, onSend, onAgain }: QuestionProps) {
  const words = t();
  const typed = command.text;
  const sure: TakeReading = { ...command, sure: asked.reading };
  return (
    <div class="sent" role="alertdialog" aria-label={ask(asked.question, typed)}>
      <div class="sent-what">
        <p class="sent-line">{ask(asked.question, typed)}</p>
        {asked.dev != null && (
          <p>
            {command.mark} {signed(asked.dev)} ft
          </p>
        )}
        <div class="tiles answers">
          {perhaps(asked.question).map((one) => (
            <Key key={JSON.stringify(one)} kind="tile" onPress={() => onSend(meant(command, one))}>
              {words.was(perhapsWords(one))}
            </Key>
          ))}
          {otherWay(asked.question, command) && (
            <Key kind="tile" onPress={() => onSend({ ...command, mode: "receiver_high" })}>
              {words.was(`${words.high} ${typed}`)}
            </Key>
          )}
          <Key kind="tile" onPress={() => onSend(sure)}>
            {words.rightAs(rightWords(command))}
          </Key>
        </div>
      </div>
      <div class="sent-keys">
        <SendRow>
          <Key kind="send" onPress={onAgain}>
            {words.readIt}
          </Key>
        </SendRow>
      </div>
    </div>
  );
}

/** A receiver that said LOW after HIGH: the other way is as likely as this one. */
function otherWay(question: Question, command: TakeReading): boolean {
  return (
    question.kind === "does_not_fit" && question.doubt.kind === "which_way" && command.mode === "receiver_low"
  );
}

/** What was typed, as the answer that it is right names it. */
function rightWords(command: TakeReading): string {
  const words = t();
  const text = command.text;
  if (command.mode === "rod") return text;
  return `${command.mode === "receiver_high" ? words.high : words.low} ${text}`;
}

/** The question in words. */
export function ask(question: Question, typed: string): string {
  const words = t().asks;
  const by = (value: number) => length(value, unit.value);
  switch (question.kind) {
    case "far_from_grade":
      return words.far_from_grade(by(question.dev));
    case "other_machine":
      return words.other_machine(question.assigned);
    case "which_is_right":
      return words.which_is_right(by(question.spread));
    case "does_not_fit":
      break;
  }
  const doubt = question.doubt;
  switch (doubt.kind) {
    case "which_way":
      return words.which_way;
    case "ground_rose":
      return words.ground_rose(typed, by(doubt.by));
    case "repeat_off":
      return words.repeat_off(by(doubt.by));
    case "other_mark":
      return words.other_mark(doubt.perhaps);
    case "far_below":
      return words.far_below(typed, by(doubt.by));
  }
}

/** What it may have been, likeliest first. */
export function perhaps(question: Question): Perhaps[] {
  if (question.kind !== "does_not_fit") return [];
  const doubt = question.doubt;
  if (doubt.kind === "other_mark") return [{ kind: "mark", id: doubt.perhaps }];
  return doubt.kind === "ground_rose" || doubt.kind === "far_below" ? doubt.perhaps : [];
}

function perhapsWords(one: Perhaps): string {
  if (one.kind === "mark") return one.id;
  if (one.kind === "feet_inches") return t().feetInches(one.feet, one.inches);
  return rod.value ? rodText(rod.value, one.value) : String(one.value / FOOT);
}

/** The reading that was meant, as a new one: what was typed stays in the log as the question. */
export function meant(command: TakeReading, one: Perhaps): TakeReading {
  if (one.kind === "mark") {
    chooseMark(one.id);
    const { side: _side, machine: _machine, ...rest } = command;
    return { ...rest, mark: one.id };
  }
  const rods = sheet.value?.rods ?? [];
  const named = one.kind === "feet_inches" && one.rod ? rods.find((each) => each.id === one.rod) : null;
  const on = named ?? rods.find((each) => each.id === command.rod);
  if (!on) return command;
  const value = one.kind === "reading" ? one.value : one.feet * FOOT + one.inches * INCH + on.bracket;
  return { ...command, rod: on.id, text: rodText(on, value) };
}
