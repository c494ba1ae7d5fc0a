import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of damage and of the travel say. */
export const travelWords: Readonly<Record<string, RuleWords>> = {
  knocks: {
    reason: "Un golpeteo es holgura o una pieza suelta, y ningún ajuste lo quita.",
    notice: "Nada hasta encontrarlo.",
    otherwise:
      "Deja de rodar con ella: mira dirección, casquillos, rodamientos, tornillos y la rueda, y que lo juzgue un mecánico cualificado.",
  },
  "oil-on-the-shaft": {
    reason: "El aceite que está fuera falta dentro: cede un retén o un hidráulico.",
    notice: "Nada hasta hacer el mantenimiento.",
    otherwise: "Apunta los ajustes y lleva la pieza a mantenimiento antes de volver a bajar fuerte con ella.",
  },
  "loses-air": {
    reason: "Una cámara que pierde aire no tiene ajuste: lo que se ajusta hoy mañana ya no está.",
    notice: "Nada hasta que aguante la presión.",
    otherwise:
      "Compara la primera lectura de la bomba con la que debe salir; si es baja, mira válvula y retenes, o lleva la pieza a mantenimiento.",
  },
  "rim-strikes": {
    reason: "La llanta golpea a través de la cubierta: más presión antes de perder una llanta o una cubierta.",
    notice: "Las piedras dejan de sonar en la llanta.",
    otherwise:
      "Mira si la llanta tiene abolladuras, y mira la trazada; una carcasa más firme hace lo que la presión no puede.",
  },
  "rim-strikes-and-slides": {
    reason:
      "Da llantazos y la rueda resbala: la cubierta no puede dar las dos cosas, así que primero la llanta, y el agarre con el muelle.",
    notice: "Las piedras dejan de sonar en la llanta; el agarre llega con el cambio siguiente.",
    otherwise: "Otros tacos o una carcasa más firme son la respuesta que no da la presión.",
  },
  "worn-damper": {
    reason:
      "Sag correcto, y aun así demasiado rápido y sin recorrido de sobra: el hidráulico hace menos de lo que dicen sus clics.",
    notice: "Nada hasta hacer el mantenimiento.",
    otherwise: "Mira las horas de mantenimiento; un aceite viejo o con espuma se nota igual.",
  },
  sticks: {
    reason: "Sag correcto, seco al inicio y no llega nunca al final: se agarrota por el camino.",
    notice: "Nada hasta haberlo mirado.",
    otherwise:
      "Limpia y engrasa los retenes, revisa casquillos y alineación, y mira las horas del aceite de lubricación.",
  },
  "soft-all-along": {
    reason:
      "Se hunde a medio recorrido y lo usa todo: blando en todo el recorrido, así que el muelle principal y no su final.",
    notice: "Va más alto en curvas y frenadas, y guarda recorrido para los golpes grandes.",
    otherwise: "Después la presión secundaria, o un espaciador.",
  },
  "full-travel-too-easily": {
    reason: "Todo el recorrido se usa demasiado a menudo con el sag correcto: primero, apoyo al final del recorrido.",
    notice: "Los golpes grandes no llegan al final del recorrido; el inicio se nota como antes.",
    otherwise: "Después sube la presión principal; y luego, más compresión de alta velocidad.",
  },
  "end-hits-hard": {
    reason: "Llega al final del recorrido con demasiada fuerza: más apoyo justo antes.",
    notice: "La última parte del recorrido llega con más suavidad.",
    otherwise: "Mira el tope de final de recorrido, y si la cubierta toca el cuadro o las tijas.",
  },
  "firm-start-soft-end": {
    reason: "Seco al inicio y fuerte al final: el muelle tiene que ser más blando al principio y más firme al final.",
    notice: "El final llega con más suavidad; el inicio mejora con el cambio siguiente a este.",
    otherwise: "Cuando el final aguante, baja un paso la presión principal por el inicio.",
  },
  "firm-all-along": {
    reason:
      "Seco a medio recorrido y no llega nunca al final: firme en todo el recorrido, así que primero el muelle principal.",
    notice: "Los golpes secos se redondean y la anilla llega más lejos.",
    otherwise: "Después menos presión secundaria, o un espaciador menos.",
  },
  "travel-never-used": {
    reason:
      "El sag es correcto y los golpes que deberían usar el recorrido no lo usan: menos apoyo al final del recorrido.",
    notice: "Los golpes grandes entran más adentro y se notan menos en manos y pies.",
    otherwise:
      "Después baja la presión principal; una pieza que se agarrota al final del recorrido va a mantenimiento.",
  },
  "soft-start-firm-end": {
    reason: "Blando al inicio y no llega nunca al final: el muelle se endurece demasiado por el camino.",
    notice: "El recorrido se usa de forma más pareja.",
    otherwise: "Cuando llegue al final, sube un paso la presión principal por el inicio.",
  },
  "end-never-reached": {
    reason: "El piloto dice que no llega nunca al final del recorrido: ahí, un paso pequeño menos de apoyo.",
    notice: "Las recepciones duras usan un poco más de recorrido.",
    otherwise: "Mide con la anilla el recorrido usado en la próxima bajada antes de seguir.",
  },
};
