package rushlight.notes;

/** How a file of notes is written. */
public enum Format {
    /** WebVTT, as the W3C specifies it. */
    WEBVTT,
    /** SubRip: numbered blocks. */
    SRT,
    /** Lines that begin with a time, or a text without any. */
    PLAIN
}
