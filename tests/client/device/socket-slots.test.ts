import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { createSocketSlots, type Rank } from "#client/device/connection/socket-slots.ts";

describe("the sockets of a device", () => {
  test("are never more than the cap, and every place that is given back is used, whatever comes and goes", () => {
    const acts = fc.array(fc.record({ rank: fc.constantFrom<Rank>(0, 1, 2), leaves: fc.option(fc.nat()) }), {
      maxLength: 60,
    });
    fc.assert(
      fc.property(acts, fc.integer({ min: 1, max: 5 }), (turns, most) => {
        const slots = createSocketSlots(most);
        const wishes: { placed: boolean; leave: () => void }[] = [];
        for (const { rank, leaves } of turns) {
          const wish = { placed: false, leave: () => {} };
          wishes.push(wish);
          wish.leave = slots.take(rank, () => {
            wish.placed = true;
          });
          if (leaves !== null) {
            const [gone] = wishes.splice(leaves % wishes.length, 1);
            gone?.leave();
            gone?.leave();
          }
          expect(wishes.filter(({ placed }) => placed).length).toBe(Math.min(most, wishes.length));
        }
      }),
    );
  });

  test("go to the highest rank first, and within a rank to who has waited longest", () => {
    const slots = createSocketSlots(1);
    const order: string[] = [];
    const leaves = new Map<string, () => void>();
    const wish = (name: string, rank: Rank): void => {
      leaves.set(
        name,
        slots.take(rank, () => void order.push(name)),
      );
    };
    wish("first", 2);
    wish("history", 2);
    wish("season a", 1);
    wish("season b", 1);
    wish("team", 0);
    for (const name of ["first", "team", "season a", "season b"]) leaves.get(name)?.();
    expect(order).toEqual(["first", "team", "season a", "season b", "history"]);
  });

  test("are given up only for somebody who waits, and never by the team", () => {
    const slots = createSocketSlots(2);
    slots.take(0, () => {});
    slots.take(2, () => {});
    expect([slots.shouldMakeRoom(0), slots.shouldMakeRoom(1), slots.shouldMakeRoom(2)]).toEqual([false, false, false]);
    slots.take(2, () => {});
    expect([slots.shouldMakeRoom(0), slots.shouldMakeRoom(2)]).toEqual([false, true]);
  });

  test("of the open season stay while history waits, but for the few that let history take turns", () => {
    const slots = createSocketSlots(6);
    for (let count = 0; count < 2; count += 1) slots.take(1, () => {});
    for (let count = 0; count < 4; count += 1) slots.take(2, () => {});
    slots.take(2, () => {});
    expect(slots.shouldMakeRoom(1)).toBe(false);
    const full = createSocketSlots(6);
    for (let count = 0; count < 6; count += 1) full.take(1, () => {});
    full.take(2, () => {});
    expect(full.shouldMakeRoom(1)).toBe(true);
  });
});
