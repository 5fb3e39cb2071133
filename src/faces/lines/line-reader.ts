import { StringDecoder } from 'node:string_decoder';

/** Of a line far longer than any answer only the beginning is held. */
const LONGEST_LINE = 10_000;

/** Lines of a plain stream, one at a time. Null at the end of input, or once it was stopped. */
export class LineReader {
  private readonly waiting: ((line: string | null) => void)[] = [];
  private readonly ready: string[] = [];
  private rest = '';
  private ended = false;
  private readonly decoder = new StringDecoder('utf8');

  constructor(private readonly stdin: NodeJS.ReadableStream) {
    stdin.on('data', this.onData).on('end', this.stop).on('error', this.stop);
    stdin.resume();
  }

  next(): Promise<string | null> {
    const line = this.ready.shift();
    if (line !== undefined) return Promise.resolve(line);
    if (this.ended) return Promise.resolve(null);
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /**
   * Drop what was typed before what stands there now, and give how many lines that were. From a terminal one line comes
   * at a time, so we look until the event loop has read the keyboard and found nothing.
   */
  async dropEarly(): Promise<number> {
    let dropped = 0;
    for (let found = true; found; ) {
      await new Promise((resolve) => setImmediate(() => setImmediate(resolve)));
      found = this.ready.length > 0;
      dropped += this.ready.splice(0).length;
    }
    return dropped;
  }

  /** No more lines: whoever waits gets null. */
  readonly stop = (): void => {
    if (this.ended) return;
    if (this.rest !== '') this.give(this.rest);
    this.ended = true;
    for (const resolve of this.waiting.splice(0)) resolve(null);
  };

  close(): void {
    this.rest = '';
    this.stop();
    this.stdin.off('data', this.onData).off('end', this.stop).off('error', this.stop);
    this.stdin.pause();
  }

  private readonly onData = (chunk: Buffer | string): void => {
    this.rest += typeof chunk === 'string' ? chunk : this.decoder.write(chunk);
    const lines = this.rest.split(/\r\n|\n|\r/);
    this.rest = lines.pop()!.slice(0, LONGEST_LINE);
    for (const line of lines) this.give(line);
  };

  private give(line: string): void {
    const resolve = this.waiting.shift();
    if (resolve === undefined) this.ready.push(line);
    else resolve(line);
  }
}
