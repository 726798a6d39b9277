/** In the morning, on a phone that stayed in over the night: who holds it. Until then it says nothing but STOP. */
import { say } from "../../hub";
import { Key, StopKey } from "../../parts/keys";
import { LanguageChoice } from "../../parts/settings";
import { me, notice } from "../../state";
import { t } from "../../words_later";

export function WhoPage() {
  const words = t();
  const person = me.value?.person ?? "";
  const answer = async (same: boolean) => {
    const reply = await say({ kind: "say_who", person, same });
    // The page of the role, or the form for somebody else, is another page.
    if (reply.kind === "answer") location.replace("/");
  };
  return (
    <div class="frame join">
      <main class="body">
        <h1>{words.stillYou(person)}</h1>
        {notice.value && (
          <p class="warning" role="alert">
            {notice.value}
          </p>
        )}
        <p>{words.stillYouWhy}</p>
        <Key kind="send" onPress={() => void answer(true)}>
          {words.yesIAm(person)}
        </Key>
        <Key kind="wide" onPress={() => void answer(false)}>
          {words.somebodyElse}
        </Key>
        <LanguageChoice />
        <StopKey />
      </main>
    </div>
  );
}
