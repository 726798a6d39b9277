/** What is missing before a day can be closed, in words. */
import { setUpName } from "../../../given_names";
import type { CloseMissing } from "../../../wire";
import { t } from "../words";

export function missingWords(one: CloseMissing): string {
  const kinds = t().record.missingKind;
  switch (one.kind) {
    case "people_in":
      return kinds.people_in(one.people.join(", "), one.machine);
    case "closing_check":
      return kinds.closing_check(setUpName(one.set_up));
    case "shoot_again":
      return kinds.shoot_again(one.mark);
    case "visitor_on_site":
      return kinds.visitor_on_site(one.person);
  }
}
