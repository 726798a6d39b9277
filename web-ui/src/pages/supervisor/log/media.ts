/** Whether the screen is as a media query says, told anew when it changes. */
import { useEffect, useState } from "preact/hooks";

export function useMedia(query: string): boolean {
  const [list] = useState(() => matchMedia(query));
  const [fits, setFits] = useState(list.matches);
  useEffect(() => {
    const turned = () => setFits(list.matches);
    turned();
    list.addEventListener("change", turned);
    return () => list.removeEventListener("change", turned);
  }, [list]);
  return fits;
}
