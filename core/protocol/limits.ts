/** Largest single update that the server takes, in bytes. */
export const maximumUpdateBytes = 1024 * 1024;

/**
 * Largest answer to a sync step 1, in bytes. A device that was away, or whose server came back from an old copy, answers
 * with all that is missing in one message, and a stock client cannot split it: at the limit of a single update it
 * would be cut off for ever.
 */
export const maximumCatchUpBytes = 16 * 1024 * 1024;

/** Largest message on the socket, in bytes: the largest catch-up with its few numbers in front. */
export const maximumMessageBytes = maximumCatchUpBytes + 64;

/** Largest presence message, in bytes. */
export const maximumPresenceBytes = 64 * 1024;

/** What a socket may send at once, in bytes: one largest catch-up and what a device adds while it is on its way. */
export const budgetBurstBytes = 32 * 1024 * 1024;

/** What a socket may send for ever, in bytes a second. A busy device writes a hundredth of it. */
export const budgetBytesPerSecond = 4 * 1024 * 1024;

/** Bytes that every message costs beside its own, so that a flood of tiny ones has a price too. */
export const budgetBytesPerMessage = 64;

/** Longest sentence of a refusal, in UTF-16 code units. */
export const maximumRefusalSentence = 500;

/** Most receipts in one message, and most devices whose receipts are kept for one document. */
export const maximumReceipts = 256;

/** Most writers that a receipt may name: a season has one for each start of the app on which something was written. */
export const maximumReceiptWriters = 32_768;

/** Largest message with receipts, in bytes: one of the largest receipts, or many smaller ones. */
export const maximumReceiptsBytes = 1024 * 1024;

/** Longest id of a device or member in a receipt, in UTF-16 code units. */
export const maximumReceiptName = 64;

/** Path below which the documents are reached: `/sync/<document name>`. */
export const syncPath = "/sync/";
