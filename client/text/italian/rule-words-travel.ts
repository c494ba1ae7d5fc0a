import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of damage and of the travel say. */
export const travelWords: Readonly<Record<string, RuleWords>> = {
  knocks: {
    reason: "Un rumore metallico è gioco o un pezzo allentato: nessuna regolazione lo cura.",
    notice: "Niente, finché non è trovato.",
    otherwise:
      "Non usarla più: guarda serie sterzo, boccole, cuscinetti, viti e ruota, e falla giudicare da un meccanico qualificato.",
  },
  "oil-on-the-shaft": {
    reason: "L’olio che è fuori manca dentro: sta cedendo un paraolio o l’idraulica.",
    notice: "Niente, prima della revisione.",
    otherwise: "Annota le regolazioni e dai il componente in revisione prima di guidare ancora forte.",
  },
  "loses-air": {
    reason: "Una camera che perde aria non ha regolazione: quello che regoli oggi domani non c’è più.",
    notice: "Niente, finché non tiene la pressione.",
    otherwise:
      "Confronta la prima lettura della pompa con quella da aspettarsi; se è bassa, guarda valvola e guarnizioni, o dai il componente in revisione.",
  },
  "rim-strikes": {
    reason: "Il cerchio batte attraverso la gomma: più pressione, prima di perdere un cerchio o una gomma.",
    notice: "I sassi non suonano più sul cerchio.",
    otherwise:
      "Guarda le ammaccature del cerchio e la linea; una carcassa più robusta fa quello che la pressione non può.",
  },
  "rim-strikes-and-slides": {
    reason:
      "Il cerchio batte e la ruota scivola: la gomma non può dare tutt’e due, quindi prima il cerchio, e il grip dalla molla.",
    notice: "I sassi non suonano più sul cerchio; il grip arriva con la modifica dopo.",
    otherwise: "Altri tasselli o una carcassa più robusta sono la risposta che la pressione non dà.",
  },
  "worn-damper": {
    reason:
      "Sag giusto, eppure troppo veloce e fino in fondo all’escursione: l’idraulica fa meno di quanto dicono i clic.",
    notice: "Niente, prima della revisione.",
    otherwise: "Guarda le ore di revisione; olio vecchio o schiumato dà la stessa sensazione.",
  },
  sticks: {
    reason: "Sag giusto, duro all’inizio e mai in fondo: si pianta per strada.",
    notice: "Niente, prima di averlo guardato.",
    otherwise:
      "Pulisci e olia i paraoli, controlla boccole e allineamento, e guarda le ore dell’olio di lubrificazione.",
  },
  "soft-all-along": {
    reason:
      "Affonda a metà e usa tutta l’escursione: morbido dappertutto, quindi la molla principale e non il suo finale.",
    notice: "Sta più alto in curva e in frenata, e tiene escursione per i colpi forti.",
    otherwise: "Poi la pressione secondaria, o uno spaziatore.",
  },
  "full-travel-too-easily": {
    reason: "Usa troppo spesso tutta l’escursione, con il sag giusto: prima il sostegno verso fine corsa.",
    notice: "I colpi forti non arrivano a fine corsa; l’inizio si sente come prima.",
    otherwise: "Poi aumenta la pressione principale; dopo ancora, più compressione alte velocità.",
  },
  "end-hits-hard": {
    reason: "La fine della corsa arriva troppo dura: più sostegno appena prima.",
    notice: "L’ultima parte della corsa arriva più dolce.",
    otherwise: "Controlla il tampone di fine corsa, e se la gomma tocca il telaio o la testa della forcella.",
  },
  "firm-start-soft-end": {
    reason: "Duro all’inizio e picchia in fondo: la molla deve diventare più morbida prima e più sostenuta alla fine.",
    notice: "La fine arriva più dolce; l’inizio si ammorbidisce con la modifica dopo questa.",
    otherwise: "Quando la fine tiene, abbassa la pressione principale di un passo per l’inizio.",
  },
  "firm-all-along": {
    reason: "Duro a metà e mai in fondo: rigido dappertutto, quindi prima la molla principale.",
    notice: "I colpi secchi si sentono più arrotondati e l’anellino va più avanti.",
    otherwise: "Poi meno pressione secondaria, o uno spaziatore in meno.",
  },
  "travel-never-used": {
    reason:
      "Il sag è giusto, e i colpi che dovrebbero usare l’escursione non la usano: meno sostegno verso fine corsa.",
    notice: "I colpi forti vanno più in fondo e si sentono meno in mani e piedi.",
    otherwise: "Poi abbassa la pressione principale; un componente che si pianta verso fine corsa va in revisione.",
  },
  "soft-start-firm-end": {
    reason: "Morbido all’inizio e mai in fondo: la molla sale troppo per strada.",
    notice: "L’escursione si usa in modo più uniforme.",
    otherwise: "Quando la fine si raggiunge, aumenta la pressione principale di un passo per l’inizio.",
  },
  "end-never-reached": {
    reason: "Il pilota dice che la fine della corsa non si raggiunge mai: un piccolo passo di sostegno in meno lì.",
    notice: "Gli atterraggi duri usano un po’ più di escursione.",
    otherwise: "Misura l’escursione usata con l’anellino nella prossima run prima di andare oltre.",
  },
};
