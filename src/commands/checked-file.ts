import type { PrivateKind } from '../interview/questions/question';
import type { Fault } from '../store/home-file';

/** What was found out about a file: in words for a person, and as data. */
export interface CheckedFile {
  readonly kind: 'home' | 'tariff' | 'quote' | 'plan';
  readonly ok: boolean;
  readonly says: string;
  readonly faults: readonly Fault[];
  /** What stands in it and is not read. */
  readonly remarks?: readonly Fault[];
  /** Of a home: how many answers, and which of them are private. */
  readonly answers?: number;
  readonly private?: Readonly<Record<PrivateKind, readonly string[]>>;
}

/** The same as data, for another program. Places count from 1. */
export function checkedData(path: string, checked: CheckedFile): object {
  const { kind, ok, faults, remarks = [], answers, private: held } = checked;
  return {
    file: path,
    kind,
    ok,
    ...(answers === undefined ? {} : { answers }),
    faults,
    remarks,
    ...(held === undefined ? {} : { private: held }),
  };
}
