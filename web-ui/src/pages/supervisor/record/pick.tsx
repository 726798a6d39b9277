/** Several of a list, each a key that stays pressed. */
import { Key } from "../../../parts/keys";

interface PickProps {
  title: string;
  all: readonly { id: string; name: string }[];
  picked: readonly string[];
  onPick: (picked: string[]) => void;
}

export function Pick({ title, all, picked, onPick }: PickProps) {
  const turn = (id: string) =>
    onPick(picked.includes(id) ? picked.filter((one) => one !== id) : [...picked, id]);
  return (
    <fieldset class="choice">
      <legend>{title}</legend>
      <div class="tiles pick">
        {all.map((one) => (
          <Key key={one.id} kind="tile" pressed={picked.includes(one.id)} onPress={() => turn(one.id)}>
            {one.name}
          </Key>
        ))}
      </div>
    </fieldset>
  );
}
