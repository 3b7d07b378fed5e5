package rushlight.notes;

/** A fault of the reader, with the line it stands in. */
record Miss(String narration, String line, String words, String concept, String what) {}
