package rushlight.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rushlight.words.Token;

/** Cuts notes into clauses: at marks, at words that join clauses, and before who acts next where there are no marks. */
final class Clauses {
    private static final String ENDS = ".!?;:()\u2026";
    private static final int MANY = 12;

    /** Nobody speaks so long a clause; what every word says of every other takes the square of it. */
    private static final int LONGEST = 120;

    private static final int ASIDE = 4;

    /** Values of cues that count where a line begins, so that nothing is cut before them. */
    private static final Set<String> ONLY_FIRST = Set.of("first", "begins", "count", "number");

    private static final Set<String> JOINS = SmallWords.of("joins");
    private static final Set<String> ARTICLES = SmallWords.of("articles");
    private static final Set<String> SPEAKERS = SmallWords.of("speakers");

    private final Narration notes;
    private final List<Token> tokens;
    private final Map<Integer, Cues.Act> breaks = new HashMap<>();
    private final Map<Integer, Cues.Found> names = new HashMap<>();
    private final Set<Integer> noSubjects = new HashSet<>();
    private final List<Clause> found = new ArrayList<>();

    private Clauses(Narration notes, List<Token> tokens, Cues.Marks marks) {
        this.notes = notes;
        this.tokens = tokens;
        marks.showing().stream().filter(f -> f.act() == Cues.Act.BREAK).forEach(f -> breaks.put(f.first(), f.act()));
        marks.naming().forEach(f -> names.putIfAbsent(f.first(), f));
        marks.showing().stream().filter(f -> f.act() == Cues.Act.NO_SUBJECT).forEach(f -> noSubjects.add(f.first()));
        marks.asserting().forEach(f -> IntStream.range(f.first() + 1, f.end()).forEach(breaks::remove));
        marks.parting().stream()
                .filter(f -> (f.act() == Cues.Act.BOUNDARY && !ONLY_FIRST.contains(f.value()))
                        || (f.act() == Cues.Act.REPLAY && !ONLY_FIRST.contains(f.value())))
                .forEach(f -> breaks.put(f.first(), f.act()));
    }

    static List<Clause> of(Narration notes, List<Token> tokens, Cues.Marks marks) {
        Clauses clauses = new Clauses(notes, tokens, marks);
        clauses.cut();
        return List.copyOf(clauses.found);
    }

    private void cut() {
        int token = 0;
        for (int c = 0; c < notes.cues().size(); c++) {
            int to = notes.cues().get(c).to();
            int end = token;
            while (end < tokens.size()
                    && !(tokens.get(end).from() >= to && tokens.get(end).text().equals("\n"))) {
                end++;
            }
            cue(c, token, end);
            token = end + 1;
        }
    }

    private void cue(int cue, int first, int end) {
        int marks = 0;
        for (int i = first; i < end; i++) {
            marks += tokens.get(i).word() ? 0 : 1;
        }
        boolean spoken = end - first > MANY && marks == 0;
        int start = first;
        for (int i = first; i < end; i++) {
            Token token = tokens.get(i);
            if (!token.word() && ENDS.contains(token.text())) {
                close(cue, first, start, i, token.text().equals("?"), spoken);
                start = i + 1;
            } else if (i - start >= LONGEST
                    || (i > start
                            && (breaks.containsKey(i) || isNewSubject(i, start, spoken) || isAfterComma(i, start)))) {
                close(cue, first, start, i, false, spoken);
                start = i;
            }
        }
        close(cue, first, start, end, false, spoken);
    }

    private void close(int cue, int first, int start, int end, boolean question, boolean spoken) {
        if (end > start) {
            found.add(new Clause(start, end, cue, start == first, question, spoken));
        }
    }

    /** Who acts next begins a clause where no mark does: "he rips the tackle holds him". */
    private boolean isNewSubject(int i, int start, boolean spoken) {
        Cues.Found name = names.get(i);
        if (name == null || i - start < (SPEAKERS.contains(tokens.get(start).key()) ? ASIDE : 2)) {
            return false;
        }
        int before = i - 1;
        while (before > start && ARTICLES.contains(tokens.get(before).key())) {
            before--;
        }
        boolean joined = JOINS.contains(tokens.get(before).key());
        boolean object = names.containsKey(i - 1) || (name.act() != Cues.Act.PRONOUN && isFollowedBySmallWord(name));
        return (spoken || joined) && !object && isSubject(name);
    }

    /** "Hits the quarterback as he throws": who is named is hit, and does nothing. */
    private boolean isFollowedBySmallWord(Cues.Found name) {
        return noSubjects.contains(name.end())
                || name.end() >= tokens.size()
                || !tokens.get(name.end()).word();
    }

    private boolean isAfterComma(int i, int start) {
        Cues.Found name = names.get(i);
        boolean comma = i > 0 && !tokens.get(i - 1).word();
        return comma && name != null && isSubject(name) && !(isFollowedBySmallWord(name) && isOthers(start, i));
    }

    /** Whether somebody else acts there: "the safety fills, tackle for none" is his to the end. */
    private boolean isOthers(int from, int to) {
        return IntStream.range(from, to).mapToObj(names::get).anyMatch(name -> name != null && name.isSomebodyElse());
    }

    private boolean isSubject(Cues.Found name) {
        String key = tokens.get(name.first()).key();
        return name.act() != Cues.Act.PRONOUN || !(key.equals("him") || key.equals("his") || key.equals("himself"));
    }
}
