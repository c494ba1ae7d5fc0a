/** Temperature and altitude at which a pressure was, or will be, read. A gauge reading means nothing without them. */
import * as z from "zod/mini";
import { quantitySchema } from "./quantity-schema.ts";

export const airTemperatureSchema = quantitySchema("temperature", {
  minimum: { value: -30, unit: "°C" },
  maximum: { value: 55, unit: "°C" },
});

export const altitudeSchema = quantitySchema("length", {
  minimum: { value: -400, unit: "m" },
  maximum: { value: 5000, unit: "m" },
});

export const surroundingsSchema = z.object({ temperature: airTemperatureSchema, altitude: altitudeSchema });
export type Surroundings = z.infer<typeof surroundingsSchema>;
