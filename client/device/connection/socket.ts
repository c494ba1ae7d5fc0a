/** A socket as the connection sees it: a browser's WebSocket, or a simulated one. */
export interface Socket {
  send(message: Uint8Array): void;
  /** Ends it; no call comes back afterwards. */
  close(): void;
}

export interface SocketEvents {
  readonly onOpen: () => void;
  readonly onMessage: (message: Uint8Array) => void;
  /** It could not be opened, or has ended; `code` as in RFC 6455, section 7.4. */
  readonly onClose: (code: number) => void;
}

/** Opens a socket to a document's place on the server. */
export type OpenSocket = (document: string, events: SocketEvents) => Socket;

/** Sockets of the browser below `serverUrl`, such as `ws://127.0.0.1:4680/sync`. */
export function webSockets(serverUrl: string): OpenSocket {
  return (document, events) => {
    const socket = new WebSocket(`${serverUrl}/${document}`);
    socket.binaryType = "arraybuffer";
    let ended = false;
    socket.onopen = () => {
      if (!ended) events.onOpen();
    };
    socket.onmessage = (event: MessageEvent<ArrayBuffer>) => {
      if (!ended) events.onMessage(new Uint8Array(event.data));
    };
    // What went wrong is told by the close that follows; an error that nobody hears would end a process under Node.
    socket.onerror = () => {};
    socket.onclose = (event) => {
      if (ended) return;
      ended = true;
      events.onClose(event.code);
    };
    return {
      send: (message) => {
        if (socket.readyState === WebSocket.OPEN) socket.send(message as Uint8Array<ArrayBuffer>);
      },
      close: () => {
        ended = true;
        socket.close();
      },
    };
  };
}
