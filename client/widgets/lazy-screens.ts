/** Screens that are loaded when they are first opened: whoever waits at the first screen waits for no other. */
import { type Component, lazy } from "solid-js";

/** The names of the screens among what a module exports. */
type ScreenNames<Module> = { [Name in keyof Module]: Module[Name] extends Component ? Name : never }[keyof Module];

/** Makes screens out of the exports of one module, which is loaded once. */
export function lazyScreens<Module>(load: () => Promise<Module>) {
  return (name: ScreenNames<Module>) => lazy(async () => ({ default: (await load())[name] as Component }));
}
