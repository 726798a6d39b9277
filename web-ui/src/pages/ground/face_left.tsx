/** A face that has to be left stands above every page of the ground person. */
import { FOOT } from "../../grade";
import { ground } from "../../state";
import { t } from "../../words";

export function FaceLeftStrip() {
  const words = t().cuts;
  const left = (ground.value?.cuts.faces ?? []).filter((card) => card.alarm);
  return (
    <>
      {left.map((card) => (
        <p class="warning" role="alert" key={card.id}>
          {words.leave} · {words.leaveStrip(card.name, Math.ceil(card.strip / FOOT).toString())}
        </p>
      ))}
    </>
  );
}
