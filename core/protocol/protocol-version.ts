/**
 * Version of everything in this room: message numbers, message forms and close codes.
 * It grows by one with each change that a peer can observe; a test compares the forms with a fingerprint per version.
 */
export const protocolVersion = 4;
