import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of the sag and of the feel of the spring say. */
export const springWords: Readonly<Record<string, RuleWords>> = {
  "sag-above-target": {
    reason: "Va demasiado hundido en su recorrido: corrige el sag antes que nada de lo que viene más adentro.",
    notice: "Va más alto y tiene más recorrido de sobra.",
    otherwise: "Mide otra vez el sag, en marcha y parado; un muelle que no mantiene su sag quizá pierda aire.",
  },
  "sag-below-target": {
    reason: "Va demasiado alto en su recorrido: corrige el sag antes que nada de lo que viene más adentro.",
    notice: "Copia mejor los golpes pequeños y la rueda no se despega del suelo.",
    otherwise: "Busca rozamiento: una pieza que se agarrota da menos sag que el de su muelle.",
  },
  "start-harsh": {
    reason: "Los golpes pequeños pasan: libera el inicio del recorrido.",
    notice: "La vibración y las piedras pequeñas se notan menos.",
    otherwise: "Unos retenes secos y un aceite de lubricación vencido se notan igual: mira el mantenimiento.",
  },
  "start-too-soft": {
    reason: "Cede enseguida y se nota impreciso: un poco más de apoyo al inicio.",
    notice: "Se mantiene más arriba al bombear y al pedalear.",
    otherwise: "Mide el sag; lo que se nota blando quizá vaya demasiado hundido.",
  },
  "fork-dives": {
    reason: "La horquilla se hunde a medio recorrido: más apoyo ahí.",
    notice: "Va más alto en los peraltes y en lo empinado.",
    otherwise: "Mira el tren trasero: si va demasiado alto, echa el peso sobre la horquilla.",
  },
  "dives-under-braking": {
    reason: "La horquilla se hunde al frenar: aguántala contra el empuje lento del peso.",
    notice: "El tren delantero entra más alto en las curvas empinadas, y los brazos trabajan menos.",
    otherwise: "Mira el tren trasero: si se levanta al frenar, echa el peso hacia delante.",
  },
  "shock-wallows": {
    reason: "El tren trasero se hunde a medio recorrido: más apoyo ahí.",
    notice: "Aguanta al bombear e impulsa en el labio de los saltos.",
    otherwise:
      "Compara los dos trenes: uno trasero más blando que el delantero se hunde haga lo que haga su hidráulico.",
  },
  "sinks-in-berms": {
    reason:
      "El tren trasero se hunde con el empuje largo del peralte: primero la compresión de baja velocidad, después más muelle.",
    notice: "Mantiene su altura en los peraltes y sale de ellos con velocidad.",
    otherwise: "Comprueba el sag con el piloto equipado para correr; puede haber crecido.",
  },
  "middle-harsh": {
    reason: "Los golpes secos pasan a medio recorrido: que el hidráulico ceda antes.",
    notice: "Raíces y piedras se redondean.",
    otherwise: "Atento a un retorno demasiado lento: si se queda comprimido, todo golpe es seco.",
  },
  "hands-go-numb": {
    reason:
      "Unas manos dormidas son golpes rápidos y duros que llegan al manillar: que los paren el hidráulico y la cubierta.",
    notice: "Las manos aguantan toda la bajada.",
    otherwise: "También cuentan puños, manillar y manetas; si siguen dormidas, es cosa del médico.",
  },
  "bounces-off-stones": {
    reason: "Las piedras sacan la rueda de su trazada: tiene que ceder más rápido.",
    notice: "La rueda pasa por encima de las piedras en vez de salir despedida.",
    otherwise: "Una cubierta demasiado dura para su carcasa rebota haga lo que haga el hidráulico.",
  },
};
