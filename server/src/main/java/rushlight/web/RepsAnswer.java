package rushlight.web;

import java.util.List;

/** A page of readings. */
public record RepsAnswer(int total, int offset, int limit, List<ReadingAnswer> reps) {}
