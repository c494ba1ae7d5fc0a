import { createRoot } from "solid-js";
import { afterEach, expect, test } from "vitest";
import { createUndoKey } from "#client/widgets/undo-key.ts";

let end: (() => void) | undefined;
afterEach(() => {
  end?.();
  document.body.innerHTML = "";
});

function listen(): { readonly count: () => number } {
  let undone = 0;
  createRoot((dispose) => {
    end = dispose;
    createUndoKey(() => {
      undone += 1;
    });
  });
  return { count: () => undone };
}

function press(on: string, keys: KeyboardEventInit): void {
  document.body.innerHTML = on;
  document.body.firstElementChild?.dispatchEvent(new KeyboardEvent("keydown", { bubbles: true, ...keys }));
}

test.each([
  ["Ctrl+Z", { key: "z", ctrlKey: true }],
  ["Cmd+Z", { key: "z", metaKey: true }],
  ["Ctrl+Z with caps lock", { key: "Z", ctrlKey: true }],
])("%s undoes on a button and on a choice", (_name, keys) => {
  const undo = listen();
  press("<button>x</button>", keys);
  press('<input type="radio">', keys);
  expect(undo.count()).toBe(2);
});

test.each([
  ["z alone", "<button>x</button>", { key: "z" }],
  ["the key that does again what was undone", "<button>x</button>", { key: "z", ctrlKey: true, shiftKey: true }],
  ["the key held down", "<button>x</button>", { key: "z", ctrlKey: true, repeat: true }],
  ["a field with text", '<input type="text">', { key: "z", ctrlKey: true }],
  ["a note", "<textarea></textarea>", { key: "z", ctrlKey: true }],
  ["a page behind a dialog", "<button>x</button><dialog open></dialog>", { key: "z", ctrlKey: true }],
])("%s undoes nothing", (_name, on, keys) => {
  const undo = listen();
  press(on, keys);
  expect(undo.count()).toBe(0);
});

test("a screen that has gone undoes nothing any more", () => {
  const undo = listen();
  end?.();
  press("<button>x</button>", { key: "z", ctrlKey: true });
  expect(undo.count()).toBe(0);
});
