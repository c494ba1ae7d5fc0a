/** English texts that the first screen needs. */
export { common } from "./common.ts";
export { handOff } from "./hand-off.ts";
export { thisDevice } from "./this-device.ts";
