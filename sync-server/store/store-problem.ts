/** The data folder cannot be used; the message is one sentence for the person who started the server. */
export class StoreProblem extends Error {
  override readonly name = "StoreProblem";
}
