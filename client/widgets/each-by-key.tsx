import { type Accessor, createMemo, For, type JSX, Show } from "solid-js";

/**
 * A list whose lines stay the same on the screen while their items are made anew with every record that arrives: what is
 * open stays open, what is typed stays typed, and a button does not go away under the finger.
 */
export function EachByKey<Item>(props: {
  each: readonly Item[];
  keyOf: (item: Item) => string;
  children: (item: Accessor<Item>, index: Accessor<number>) => JSX.Element;
}) {
  const itemsByKey = createMemo(() => new Map(props.each.map((item) => [props.keyOf(item), item])));
  return (
    <For each={[...itemsByKey().keys()]}>
      {(key, index) => {
        // A line that goes away keeps its last item until it is gone.
        const item = createMemo((last: Item | undefined) => itemsByKey().get(key) ?? last);
        return <Show when={item()}>{(known) => props.children(known as Accessor<Item>, index)}</Show>;
      }}
    </For>
  );
}
