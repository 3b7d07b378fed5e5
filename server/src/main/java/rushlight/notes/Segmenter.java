package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rushlight.words.Token;

/**
 * Says of each clause whether it opens a rep, looks again at one, or speaks of the player in general. Some words open a rep
 * by themselves ("next one"); where none stands, {@link Openings} weighs what else speaks for a new rep.
 */
final class Segmenter {
    private static final int BREATH = 8;

    /** What a clause belongs to. */
    record Part(Segment.Kind kind, int rep) {}

    /**
     * How a stretch begins.
     *
     * @param summary whether the one before ended with the player in general
     * @param reps how many reps were told before
     */
    record Start(boolean summary, int reps) {
        static final Start FRESH = new Start(false, 0);
    }

    private final List<Clause> clauses;
    private final ByClause<Cues.Found> cues;
    private final List<List<Hit>> hits;
    private final Generalities general;
    private final Openings openings;
    private final Edges edges;
    private final Markers markers;
    private final List<Part> parts = new ArrayList<>();

    private Segment.Kind kind;
    private int rep;
    private int latest;
    private boolean happened;
    private Openings.SoFar soFar = Openings.SoFar.NOTHING;
    private boolean counted;
    private final boolean last;
    private final int before;
    private final boolean cut;
    private int openedIn = -1;
    private int openedAt;

    /**
     * @param said what each clause says if it is of a rep
     * @param last whether the notes end with this stretch
     */
    Segmenter(
            Narration notes,
            List<Token> tokens,
            List<Clause> clauses,
            ByClause<Cues.Found> cues,
            ByClause<Cues.Found> him,
            List<List<Hit>> hits,
            List<List<Mention>> said,
            Start start,
            boolean last) {
        this.clauses = clauses;
        this.cues = cues;
        this.hits = hits;
        this.general = new Generalities(clauses, hits, said);
        this.openings = new Openings(notes, tokens, clauses, hits, general);
        this.edges = new Edges(tokens, clauses, hits, him);
        this.markers = new Markers(tokens, clauses, cues, edges);
        this.last = last;
        this.before = start.reps();
        this.latest = before;
        this.happened = start.reps() > 0;
        this.kind = start.summary() ? Segment.Kind.SUMMARY : Segment.Kind.CHATTER;
        this.cut = start.reps() > 0 && !start.summary();
    }

    List<Part> parts() {
        for (int i = 0; i < clauses.size(); i++) {
            step(i);
            parts.add(new Part(kind, kind == Segment.Kind.REP || kind == Segment.Kind.REPLAY ? rep : 0));
            note(i);
        }
        List<Part> settled = edges.settled(parts, before, counted);
        latest = settled.stream().mapToInt(Part::rep).max().orElse(before);
        return settled;
    }

    /** How the next stretch begins. */
    Start end() {
        return new Start(kind == Segment.Kind.SUMMARY, Math.max(before, latest));
    }

    private void step(int i) {
        Clause clause = clauses.get(i);
        Set<Cues.Act> said = markers.of(i, soFar.told(), latest == 0);
        boolean boundary = said.contains(Cues.Act.BOUNDARY) || markers.isNumbered(i);
        if (said.contains(Cues.Act.FORGET)) {
            kind = Segment.Kind.CHATTER;
        } else if (said.contains(Cues.Act.SUMMARY) && !boundary) {
            sumUp(i);
        } else if (boundary) {
            boundary(i);
        } else if (said.contains(Cues.Act.REPLAY) && latest > 0) {
            kind = Segment.Kind.REPLAY;
            rep = latest;
        } else if (last
                && clause.begins()
                && latest > 0
                && !said.contains(Cues.Act.OPENER)
                && (general.isOutside(i, soFar) || isLastWord(i))) {
            kind = Segment.Kind.SUMMARY;
        } else if (kind == Segment.Kind.CHATTER
                && (latest == 0 || (cut && i == 0))
                && !hits.get(i).isEmpty()) {
            open();
        } else if (latest > 0
                && openings.opens(
                        i, soFar, kind, said.contains(Cues.Act.OPENER), markers.ofLine(i, soFar.told(), latest == 0))) {
            if (isInFirst() && !isRep()) {
                takeBackFirst();
            }
            open();
        } else if (latest == 0 && said.contains(Cues.Act.OPENER)) {
            open();
        }
    }

    /** Whether the last line sums up somewhere in it. */
    private boolean isLastWord(int i) {
        return soFar.told()
                && clauses.get(clauses.size() - 1).cue() == clauses.get(i).cue()
                && markers.ofLine(i, true, false).contains(Cues.Act.SUMMARY);
    }

    /** What was said in the same breath of nothing that happened belongs to the summary too. */
    private void sumUp(int i) {
        kind = Segment.Kind.SUMMARY;
        int cue = clauses.get(i).cue();
        int from = i;
        while (from > 0 && clauses.get(from - 1).cue() == cue && general.isGeneral(from - 1)) {
            from--;
        }
        if (from < i && clauses.get(from).begins()) {
            for (int j = from; j < i; j++) {
                parts.set(j, new Part(Segment.Kind.SUMMARY, 0));
            }
        }
    }

    /** Whether the first rep is one: a word in passing before it is none. */
    private boolean isRep() {
        return soFar.placed() || soFar.ended() || soFar.steps() > 1;
    }

    /** Two words for "next" in one breath open one rep; before the first count nothing was a rep in which nothing happens. */
    private void boundary(int i) {
        Clause clause = clauses.get(i);
        boolean first = cues.of(i).stream()
                .anyMatch(cue -> cue.act() == Cues.Act.BOUNDARY && cue.value().equals("one"));
        counted |= first && latest == 0;
        boolean idle = !happened && !(counted && soFar.heard());
        boolean led = isInFirst() && (idle || (first && !soFar.isWhole()));
        if (led) {
            takeBackFirst();
        }
        boolean breath = clause.cue() == openedIn
                && (clause.first() - openedAt <= BREATH || (!edges.isSentence(i) && !clause.spoken()));
        if (led || kind != Segment.Kind.REP || !breath || soFar.told()) {
            open();
        }
        openedIn = clause.cue();
        openedAt = clause.first();
    }

    /** Whether what is told is of the first rep of the notes. */
    private boolean isInFirst() {
        return before == 0 && latest == 1 && rep == 1;
    }

    /** What seemed the first rep is none; where another look at it tells of something, that was the rep. */
    private void takeBackFirst() {
        boolean seen = false;
        for (int i = 0; i < parts.size(); i++) {
            seen |= parts.get(i).kind() == Segment.Kind.REPLAY
                    && hits.get(i).stream().anyMatch(Hit::happens);
        }
        Part rest = seen ? new Part(Segment.Kind.REP, 1) : new Part(Segment.Kind.CHATTER, 0);
        parts.replaceAll(part -> part.kind() == Segment.Kind.REPLAY ? rest : new Part(Segment.Kind.CHATTER, 0));
        latest = seen ? 1 : 0;
        counted = true;
    }

    private void open() {
        kind = Segment.Kind.REP;
        latest++;
        rep = latest;
        soFar = Openings.SoFar.NOTHING;
    }

    private void note(int i) {
        if (kind == Segment.Kind.REP) {
            happened |= hits.get(i).stream().anyMatch(Hit::happens);
            soFar = soFar.and(hits.get(i));
        }
    }
}
