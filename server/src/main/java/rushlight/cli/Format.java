package rushlight.cli;

/** How an answer is printed: for people or for programs. */
enum Format {
    TEXT,
    JSON
}
