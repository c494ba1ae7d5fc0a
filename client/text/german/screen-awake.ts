/** German texts about the screen that stays on. */
import type { screenAwake as model } from "../english/screen-awake.ts";
import type { Said } from "../spoken.ts";

export const screenAwake: Said<typeof model> = {
  on: "Der Bildschirm bleibt an, solange diese Liste offen ist.",
  asking: "Der Bildschirm könnte ausgehen.",
  refused: "Der Browser lässt den Bildschirm gerade nicht an, vielleicht um Strom zu sparen: Er könnte ausgehen.",
  unavailable:
    "Dieser Browser kann den Bildschirm nicht anlassen: Stell in den Einstellungen des Geräts eine längere Zeit ein.",
};
