/** Spanish texts about how safe what is on this device is. */
import type { thisDevice as model } from "../english/this-device.ts";
import type { Said } from "../spoken.ts";

export const thisDevice: Said<typeof model> = {
  title: "Este dispositivo",
  promise: {
    "not asked":
      "El navegador todavía no ha prometido conservar lo que hay en este dispositivo. Se le pide con tu primer apunte.",
    granted: "El navegador ha prometido conservar lo que hay en este dispositivo, también si falta espacio.",
    "not granted":
      "El navegador no ha prometido conservar lo que hay en este dispositivo. Puede borrarlo si falta espacio; en iPhone y iPad lo borra a los 7 días sin abrir Pitslate.",
    "not offered":
      "Este navegador no promete conservar lo que hay en este dispositivo: la dirección empieza por http://, o la ventana es privada, o el navegador es viejo. Puede borrarlo si falta espacio, a los 7 días sin abrir Pitslate en iPhone y iPad, y al cerrar una ventana privada.",
  },
  install:
    "Pon Pitslate en la pantalla de inicio, desde el menú del navegador o, en iPhone y iPad, desde Compartir. Ahí empieza vacío y recibe el equipo del portátil del box.",
  save: "Al acabar el día, guarda todo en un archivo: Pasar datos sin red.",
  short: (used: string, left: string) =>
    `Falta espacio en este dispositivo: quedan unos ${left} MB, y Pitslate usa ${used} MB. Haz sitio antes de empezar el día, o puede que los apuntes no se guarden aquí.`,
};
