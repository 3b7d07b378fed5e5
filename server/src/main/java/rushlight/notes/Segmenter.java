package rushlight.notes;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rushlight.words.Token;

/** Says of each clause whether it opens a rep, looks again at one, or speaks of the player in general. */
final class Segmenter {
    private static final double TERSE = 6;
    private static final int SHORT = 3;
    private static final int BREATH = 8;
    private static final Set<String> HE = Set.of("he", "him", "his");

    /** What a clause belongs to. */
    record Part(Segment.Kind kind, int rep) {}

    private final Narration notes;
    private final List<Token> tokens;
    private final List<Clause> clauses;
    private final ByClause<Cues.Found> cues;
    private final List<List<Hit>> hits;
    private final ByClause<Cues.Found> him;
    private final List<Part> parts = new ArrayList<>();
    private final boolean terse;

    private Segment.Kind kind = Segment.Kind.CHATTER;
    private int rep;
    private int latest;
    private boolean placed;
    private boolean ended;
    private boolean happened;
    private boolean told;
    private double silence;
    private int openedIn = -1;
    private int openedAt;

    Segmenter(
            Narration notes,
            List<Token> tokens,
            List<Clause> clauses,
            ByClause<Cues.Found> cues,
            ByClause<Cues.Found> him,
            List<List<Hit>> hits) {
        this.notes = notes;
        this.tokens = tokens;
        this.clauses = clauses;
        this.cues = cues;
        this.him = him;
        this.hits = hits;
        this.terse = isTerse();
    }

    /** Notes of a few words a line, each with its own rep. */
    private boolean isTerse() {
        long words = tokens.stream().filter(Token::word).count();
        long ends = tokens.stream()
                .filter(token -> !token.word() && ".!?;".contains(token.text()))
                .count();
        return notes.cues().size() > 1 && words <= TERSE * ends;
    }

    List<Part> parts() {
        measureSilence();
        for (int i = 0; i < clauses.size(); i++) {
            step(i);
            parts.add(new Part(kind, kind == Segment.Kind.REP || kind == Segment.Kind.REPLAY ? rep : 0));
            note(i);
        }
        begin();
        return List.copyOf(parts);
    }

    private void step(int i) {
        Clause clause = clauses.get(i);
        Set<Cues.Act> said = cuesOf(i);
        boolean boundary = said.contains(Cues.Act.BOUNDARY);
        if (said.contains(Cues.Act.FORGET)) {
            kind = Segment.Kind.CHATTER;
        } else if (said.contains(Cues.Act.SUMMARY) && !boundary) {
            kind = Segment.Kind.SUMMARY;
        } else if (boundary) {
            boundary(clause);
        } else if (said.contains(Cues.Act.REPLAY) && latest > 0) {
            kind = Segment.Kind.REPLAY;
            rep = latest;
        } else if (said.contains(Cues.Act.OPENER) && opens(i)) {
            open();
        } else if (terse && clause.begins() && (notes.format() == Format.PLAIN || ended) && tellsOfRep(i)) {
            open();
        } else if (kind == Segment.Kind.CHATTER && latest == 0 && !hits.get(i).isEmpty()) {
            open();
        } else if (isNewSpot(i) || isAfterSilence(i)) {
            open();
        }
    }

    /** A down, or the kind of play, opens a rep at the beginning of a cue or when the rep before has come to its end. */
    private boolean opens(int at) {
        Clause clause = clauses.get(at);
        boolean leads = cues.of(at).stream()
                .anyMatch(cue -> cue.act() == Cues.Act.OPENER && cue.first() - clause.first() < SHORT);
        boolean between = latest == 0 || kind != Segment.Kind.REP;
        boolean time = between ? clause.begins() || latest == 0 : ended || (clause.begins() && placed);
        return leads && time;
    }

    /** What leads up to the first rep and already speaks of him belongs to it. */
    private void begin() {
        int first = 0;
        while (first < parts.size() && parts.get(first).kind() == Segment.Kind.CHATTER) {
            first++;
        }
        if (first == parts.size() || parts.get(first).kind() != Segment.Kind.REP) {
            return;
        }
        for (int i = first - 1; i >= 0 && him.of(i).stream().anyMatch(this::isHe); i--) {
            parts.set(i, new Part(Segment.Kind.REP, 1));
        }
    }

    private boolean isHe(Cues.Found name) {
        return name.act() == Cues.Act.PROSPECT
                || HE.contains(tokens.get(name.first()).key());
    }

    private void measureSilence() {
        List<Double> gaps = new ArrayList<>();
        for (int c = 1; c < notes.cues().size(); c++) {
            gaps.add(gap(c));
        }
        gaps.sort(Double::compare);
        double median = gaps.isEmpty() ? 0 : gaps.get(gaps.size() / 2);
        silence = Math.max(1, 3 * median);
    }

    private double gap(int cue) {
        Cue before = notes.cues().get(cue - 1);
        Cue now = notes.cues().get(cue);
        return before.end().isPresent() && now.start().isPresent()
                ? now.start().getAsDouble() - before.end().getAsDouble()
                : 0;
    }

    /** After a long silence what tells of a rep opens one, where the rep before has come to its end. */
    private boolean isAfterSilence(int i) {
        Clause clause = clauses.get(i);
        return clause.begins()
                && clause.cue() > 0
                && kind == Segment.Kind.REP
                && ended
                && gap(clause.cue()) >= silence
                && tellsOfRep(i);
    }

    /** Two words for "next" in one breath open one rep; words before the first count in which nothing happens open none. */
    private void boundary(Clause clause) {
        if (latest == 1 && kind == Segment.Kind.REP && !happened) {
            parts.replaceAll(part -> new Part(Segment.Kind.CHATTER, 0));
            latest = 0;
        }
        if (kind != Segment.Kind.REP || clause.cue() != openedIn || clause.first() - openedAt > BREATH || told) {
            open();
        }
        openedIn = clause.cue();
        openedAt = clause.first();
    }

    private void open() {
        kind = Segment.Kind.REP;
        latest++;
        rep = latest;
        placed = false;
        ended = false;
        told = false;
    }

    /** He lines up again although the rep has his place and how it ended. */
    private boolean isNewSpot(int i) {
        return (kind == Segment.Kind.REP || kind == Segment.Kind.REPLAY)
                && placed
                && ended
                && hits.get(i).stream()
                        .anyMatch(hit ->
                                hit.isPlace() && hit.first() - clauses.get(i).first() <= SHORT);
    }

    /** Whether a line tells of a rep of its own: neither of one before nor of the player in general. */
    private boolean tellsOfRep(int first) {
        boolean told = false;
        for (int i = first;
                i < clauses.size() && clauses.get(i).cue() == clauses.get(first).cue();
                i++) {
            Set<Cues.Act> said = cuesOf(i);
            if (said.contains(Cues.Act.REPLAY) || said.contains(Cues.Act.SUMMARY)) {
                return false;
            }
            told |= hits.get(i).stream().anyMatch(Hit::tellsOfRep);
        }
        return told;
    }

    private void note(int i) {
        if (kind == Segment.Kind.REP) {
            happened |= hits.get(i).stream().anyMatch(Hit::happens);
            placed |= hits.get(i).stream().anyMatch(Hit::isPlace);
            told |= hits.get(i).stream().anyMatch(hit -> hit.kind().step() || hit.isEnd());
            ended |= hits.get(i).stream().anyMatch(Hit::isEnd);
        }
    }

    private Set<Cues.Act> cuesOf(int clause) {
        Set<Cues.Act> said = EnumSet.noneOf(Cues.Act.class);
        Clause own = clauses.get(clause);
        for (Cues.Found cue : cues.of(clause)) {
            boolean alone = cue.end() >= tokens.size() || !tokens.get(cue.end()).word();
            boolean begins = own.begins() && cue.first() == own.first();
            boolean counts = switch (cue.value()) {
                case "first" -> begins && alone;
                case "begins" -> begins;
                default -> true;
            };
            if (counts) {
                said.add(cue.act());
            }
        }
        return said;
    }
}
