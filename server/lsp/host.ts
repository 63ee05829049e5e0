/** What the server needs from the platform it runs on, and nothing more. */

/** A file under a folder; the stamp changes when the file does. */
export interface Listed {
  readonly uri: string;
  readonly stamp: string;
}

export interface Host {
  readonly version: string;
  /** Gives the event loop a turn, so that a newer change is seen before more work is done on an older one. */
  breathe(): Promise<void>;
  /** Waits, in milliseconds. */
  pause(time: number): Promise<void>;
  /** The bytes of a file; undefined where there is none or it cannot be read. */
  read(uri: string): Promise<Uint8Array | undefined>;
  /** Section files and project files in a folder and below, in order of their path. */
  files(folder: string): Promise<readonly Listed[]>;
}
