/** English texts of why something is not handed over, or not taken in. */
export const handOffProblems = {
  foreign: "This is not a hand-off file of Pitslate, or its beginning is damaged.",
  newerVersion: {
    file: "This file was made by a newer version of Pitslate. Bring this device to that version first, then take the file in.",
    codes:
      "These codes were made by a newer version of Pitslate. Bring this device to that version first, then read them.",
  },
  tooLarge: {
    device: "There is more on this device than fits into one file.",
    file: "This file is larger than any hand-off file that this device can take in.",
  },
  tooMuchForCodes: "This is more than codes can carry in a few minutes. Hand it over by file.",
  damaged: {
    file: "This file is damaged or cut short. Ask for it once more.",
    contents: "This file does not hold what its first line says. Ask for it once more.",
    codes: "These codes cannot be read. Let the other device answer anew.",
  },
  unknownDocument: {
    file: "The file holds something that is neither the team's nor a rider's.",
    codes: "The codes hold something that is neither the team's nor a rider's.",
  },
  refusedDocument: (document: string, reason: string) => `Part of it (${document}) cannot be taken in. ${reason}`,
  /** Why a part of it cannot be taken in. */
  reasons: {
    "too large": "It is larger than a device can take in.",
    undecodable: "It is damaged and cannot be read.",
    removes: "It removes entries; entries can only be added.",
    "not records": "It holds something that is not a list of entries.",
    elsewhere: "It adds something outside the list of entries.",
    gap: "It builds on earlier entries that have not arrived; they have to be handed over first.",
    tangled: "It puts too many entries into the same places; that would take too long to sort.",
    contradicts: "It contradicts entries that are here under the same numbers.",
    "bad record": "An entry in it is damaged.",
    "other version":
      "An entry in it was written by another version of Pitslate. Bring this device to that version first.",
  },
  anotherTeam: "This file is of another team: nothing in its team is known on this device. Nothing was taken in.",
  anotherDevice: "These codes answer another device. Let the other device read what this one has, and answer anew.",
  /** Why this device does not answer another one by codes. */
  answers: {
    damaged: "What the other device has cannot be read. Let it show its code anew.",
    "another team": "The other device holds another team. Nothing is handed over.",
    "nothing here": "This device has no team yet, so it has nothing to hand over.",
    "nothing new": "The other device has all that it wants from this one.",
    differs:
      "The two devices hold different entries under the same numbers. Only the server can settle that: connect both.",
  },
  /** Why a code that the camera saw is left out. */
  codes: {
    unreadable: {
      foreign: "This code is not one of Pitslate's hand-off.",
      damaged: "This code was not read cleanly; it is left out.",
      "newer version":
        "This code was made by a newer version of Pitslate. Bring this device to that version first, then read it.",
    },
    unwanted: {
      holdings: "This code says what the other device has. The other device has to show its answer instead.",
      answer: "This code is an answer. The other device has to show what it has instead.",
      file: "This code is of all that the other device has. The other device has to show what it has instead.",
    },
    anotherHandOff:
      "This code belongs to another hand-off than the first one read; it is left out. To read this one, stop the camera and start it again.",
    noFit: "The codes do not fit together. Reading starts again from the first.",
  },
} as const;
