package rushlight.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import rushlight.words.Token;

/** Puts what was said together into reps and statements; what says the same again is set aside. */
final class Assembly {
    private static final Set<String> AGAIN = SmallWords.of("once-more");
    private static final Set<String> DEFINITE = SmallWords.of("definite");

    /** Why what says the same again is left out. */
    static final String SAID_AGAIN = "says the same again";

    /** Why what the speaker takes back is left out. */
    static final String TAKEN_BACK = "taken back";

    /** Why what is said of another rep in passing is left out. */
    static final String OF_ANOTHER_REP = "said of another rep";

    private static final int CLAUSES_BACK = 4;
    private static final int FIT = 2;

    private record Placed(int clause, Hit hit, Mention mention) {
        Saying saying() {
            return new Saying(mention.concept(), mention.actor(), mention.assertion());
        }
    }

    /** What is said, whatever the words. */
    record Saying(String concept, Actor actor, Assertion assertion) {}

    private record OfRep(int rep, Saying saying) {}

    private final Narration narration;
    private final List<Token> tokens;
    private final List<Clause> clauses;
    private final List<Segmenter.Part> parts;
    private final List<Hidden> hidden;
    private final Sequence sequence;
    private final Set<Saying> stated;
    private final Map<OfRep, Placed> latest = new HashMap<>();
    private final Map<Integer, List<Placed>> byRep = new TreeMap<>();
    private final Map<Integer, Map<Hit, Hit>> again = new HashMap<>();
    private final List<Placed> statements = new ArrayList<>();

    /**
     * @param stated what was said in general before; grows
     */
    Assembly(
            Narration narration,
            List<Token> tokens,
            List<Clause> clauses,
            List<Segmenter.Part> parts,
            List<Hidden> hidden,
            Sequence sequence,
            Set<Saying> stated) {
        this.sequence = sequence;
        this.stated = stated;
        this.narration = narration;
        this.tokens = tokens;
        this.clauses = clauses;
        this.parts = parts;
        this.hidden = hidden;
    }

    void add(int clause, Hit hit, Mention mention) {
        Segmenter.Part part = parts.get(clause);
        Mention said = mention.saying(narration.words(hit.from(), hit.to()));
        Placed placed = new Placed(clause, hit, said);
        if (part.kind() == Segment.Kind.CHATTER) {
            hide(said, "said of no rep");
            return;
        }
        List<Placed> before = part.kind() == Segment.Kind.SUMMARY
                ? statements
                : byRep.computeIfAbsent(part.rep(), r -> new ArrayList<>());
        OfRep place = new OfRep(part.rep(), placed.saying());
        Placed last = latest.get(place);
        boolean earlier = part.kind() == Segment.Kind.SUMMARY && !stated.add(placed.saying());
        if (earlier || (last != null && isSame(last, placed))) {
            hide(said, SAID_AGAIN);
            if (last != null && isStep(last)) {
                again.computeIfAbsent(part.rep(), r -> new HashMap<>()).put(hit, last.hit());
            }
        } else {
            before.add(placed);
            latest.put(place, placed);
        }
    }

    /** Sets aside what the speaker takes back: the latest of the kind of what he says instead, else the latest of all. */
    void takeBack(int clause, Cues.Found cue, Optional<Hit> instead) {
        Segmenter.Part part = parts.get(clause);
        List<Placed> before =
                part.kind() == Segment.Kind.SUMMARY ? statements : byRep.getOrDefault(part.rep(), List.of());
        for (int i = before.size() - 1; i >= 0 && before.get(i).clause() >= clause - CLAUSES_BACK; i--) {
            Placed said = before.get(i);
            boolean stands = said.mention().assertion() == Assertion.PERFORMED
                    || said.mention().assertion() == Assertion.UNCERTAIN;
            boolean meant = instead.map(
                            hit -> hit.kind().rank() == said.hit().kind().rank()
                                    && !hit.term().slug().equals(said.mention().concept()))
                    .orElse(cue.value().equals("last"));
            if (stands && meant) {
                before.remove(i);
                latest.remove(new OfRep(part.rep(), said.saying()));
                stated.remove(said.saying());
                hide(said.mention(), TAKEN_BACK);
                return;
            }
        }
    }

    /** Whether what was said before of the same rep, by the same concept, actor and assertion, is told once more. */
    private boolean isSame(Placed before, Placed now) {
        boolean repeated = has(now, AGAIN);
        boolean replay = parts.get(now.clause()).kind() == Segment.Kind.REPLAY;
        boolean told = now.hit().first() > 0
                && DEFINITE.contains(tokens.get(now.hit().first() - 1).key());
        boolean fit = now.hit().kind().rank() == FIT;
        return replay || (!repeated && (told || fit || !now.hit().kind().step() || before.clause() == now.clause()));
    }

    private boolean has(Placed placed, Set<String> words) {
        Clause clause = clauses.get(placed.clause());
        return tokens.subList(clause.first(), clause.end()).stream().anyMatch(token -> words.contains(token.key()));
    }

    void hide(Hit hit, String why) {
        hidden.add(new Hidden(hit.term().slug(), narration.words(hit.from(), hit.to()), hit.from(), hit.to(), why));
    }

    private void hide(Mention said, String why) {
        hidden.add(new Hidden(said.concept(), said.text(), said.from(), said.to(), why));
    }

    Notes notes(List<Diagnostic> diagnostics) {
        List<Segment> segments = segments();
        Map<Integer, List<Segment>> stretches = new HashMap<>();
        segments.stream()
                .filter(segment -> segment.rep() > 0)
                .forEach(segment -> stretches
                        .computeIfAbsent(segment.rep(), r -> new ArrayList<>())
                        .add(segment));
        List<ProposedRep> reps = new ArrayList<>();
        new TreeMap<>(stretches).forEach((ordinal, own) -> reps.add(rep(ordinal, own)));
        hidden.sort((a, b) -> Integer.compare(a.from(), b.from()));
        return new Notes(
                narration.source(),
                diagnostics,
                segments,
                reps,
                statements.stream().map(Placed::mention).toList(),
                hidden);
    }

    private List<Segment> segments() {
        List<Segment> found = new ArrayList<>();
        for (int i = 0; i < clauses.size(); i++) {
            Segmenter.Part part = parts.get(i);
            int from = tokens.get(clauses.get(i).first()).from();
            int to = tokens.get(clauses.get(i).end() - 1).to();
            int last = found.size() - 1;
            if (last >= 0
                    && found.get(last).kind() == part.kind()
                    && found.get(last).rep() == part.rep()) {
                found.set(
                        last,
                        new Segment(part.kind(), part.rep(), found.get(last).from(), to));
            } else {
                found.add(new Segment(part.kind(), part.rep(), from, to));
            }
        }
        return found;
    }

    private ProposedRep rep(int ordinal, List<Segment> own) {
        List<Segment> told =
                own.stream().filter(s -> s.kind() == Segment.Kind.REP).toList();
        List<Mention> tags = new ArrayList<>();
        Map<String, Integer> phases = new TreeMap<>();
        List<Placed> all = byRep.getOrDefault(ordinal, List.of());
        Map<Hit, Integer> order = sequence.of(
                all.stream().filter(Assembly::isStep).map(Placed::hit).toList(), again.getOrDefault(ordinal, Map.of()));
        for (Placed placed : all) {
            Mention said = placed.mention();
            tags.add(said.inOrder(order.getOrDefault(placed.hit(), 0)));
            String phase = placed.hit().kind().phase();
            if (!phase.isEmpty() && said.actor() != Actor.OTHER) {
                phases.merge(phase, said.assertion() == Assertion.PERFORMED ? 2 : 1, Integer::sum);
            }
        }
        Optional<String> phase =
                phases.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
        Segment first = told.isEmpty() ? own.get(0) : told.get(0);
        Segment last = told.isEmpty() ? own.get(0) : told.get(told.size() - 1);
        return new ProposedRep(
                ordinal,
                phase,
                cueAt(first.from()).map(Cue::start).orElse(OptionalDouble.empty()),
                cueAt(last.to() - 1).map(Cue::end).orElse(OptionalDouble.empty()),
                first.from(),
                last.to(),
                own.stream().filter(s -> s.kind() == Segment.Kind.REPLAY).toList(),
                tags);
    }

    private static boolean isStep(Placed placed) {
        return placed.hit().kind().step()
                && placed.mention().assertion() == Assertion.PERFORMED
                && placed.mention().actor() == Actor.PROSPECT;
    }

    private Optional<Cue> cueAt(int offset) {
        List<Cue> cues = narration.cues();
        int low = 0;
        int high = cues.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (cues.get(middle).from() <= offset) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return cues.isEmpty() ? Optional.empty() : Optional.of(cues.get(low));
    }
}
