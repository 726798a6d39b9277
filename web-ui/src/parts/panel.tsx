/** A panel over the page, for a choice or a word; it takes the focus and gives it back. */
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { t } from "../words";
import { Key, StopKey } from "./keys";
import { Tick } from "./tick";
import { graveInCab, openPanels, takesAll, Urgent } from "./urgent";

interface PanelProps {
  title: string;
  children: ComponentChildren;
  onClose: () => void;
  closeWord?: string;
}

export function Panel({ title, children, onClose, closeWord }: PanelProps) {
  const box = useRef<HTMLDivElement>(null);
  const grave = graveInCab();
  const known = useRef(grave);
  // What comes to the cab while a panel is open closes it; one that is opened under a stop has the stop over it.
  useLayoutEffect(() => {
    if (grave && grave !== known.current) onClose();
    known.current = grave;
  }, [grave]);
  useLayoutEffect(() => {
    openPanels.value++;
    return () => {
      openPanels.value--;
    };
  }, []);
  const over = takesAll.value();
  // Before the next key can be pressed, or it would land behind the panel.
  useLayoutEffect(() => {
    const before = document.activeElement;
    box.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  return (
    <div
      class="panel"
      role="dialog"
      aria-modal="true"
      aria-label={title}
      tabIndex={-1}
      ref={box}
      onKeyDown={(event) => {
        // What a panel is opened from, as another panel, does not hear of it.
        if (event.key === "Escape" || event.key === "Tab") event.stopPropagation();
        if (event.key === "Escape") onClose();
        if (event.key === "Tab") keepInside(event, box.current);
      }}
    >
      <div class="panel-head">
        <Tick />
        <h2>{title}</h2>
      </div>
      <Urgent />
      {over && <div class="panel-body">{over}</div>}
      <div class="panel-body" hidden={!!over}>
        {children}
      </div>
      <div class="row">
        <Key kind="wide" onPress={onClose}>
          {closeWord ?? t().close}
        </Key>
        <StopKey />
      </div>
    </div>
  );
}

/** The focus goes round inside the panel. */
function keepInside(event: KeyboardEvent, box: HTMLElement | null): void {
  const all = box?.querySelectorAll<HTMLElement>("button:not(:disabled), input, select, a[href]");
  const first = all?.[0];
  const last = all?.[all.length - 1];
  if (!first || !last) return;
  const here = document.activeElement;
  if (event.shiftKey && (here === first || here === box)) {
    event.preventDefault();
    last.focus();
  } else if (!event.shiftKey && here === last) {
    event.preventDefault();
    first.focus();
  }
}
