/** The document's title: what stands, then whose page it is. It names no number: what a dead page leaves behind is no call. */
import { useEffect } from "preact/hooks";
import { t } from "../words";

export function useTitle(...parts: (string | null | undefined | false)[]): void {
  const title = [...parts.filter(Boolean), t().title].join(" · ");
  useEffect(() => {
    document.title = title;
  }, [title]);
}
