// The candle on the desk, shared by the parts of its view.
export const state = {
  /** The declaration and what its fields say. */
  declared: null,
  /** The amounts of its blend, as they are typed, dragged and converted; null for a batch. */
  form: null,
  /** What the program last said of it. */
  desk: null,
  /** The last answer without problems: what is shown beside a field that is wrong. */
  sound: null,
  /** Which paper is shown. */
  paper: { kind: null, edition: null, language: null, count: 6 },
  /** True while a finger holds the handle of the load line. */
  dragging: false,
  /** Counts the candles that were opened: what was asked for an earlier one is dropped. */
  visit: 0,
};

/** The paper as the program is asked for it. */
export const wish = (more = {}) => ({ id: state.declared.id, edits: state.declared.edits(), paper: { ...state.paper, ...more } });

let work = async () => {};

/** Who asks what follows after every change: the view of the candle. */
export function whenTouched(asks) { work = asks; }

/** Tells that a value was changed. */
export const touched = () => work();
