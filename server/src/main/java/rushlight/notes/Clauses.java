package rushlight.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rushlight.words.Token;

/** Cuts notes into clauses: at marks, at words that join clauses, and before who acts next where there are no marks. */
final class Clauses {
    private static final String ENDS = ".!?;:()\u2026";
    private static final int MANY = 12;
    private static final java.util.Set<String> JOINS = java.util.Set.of("and", "or");

    private final Narration notes;
    private final List<Token> tokens;
    private final Map<Integer, Cues.Act> breaks = new HashMap<>();
    private final Map<Integer, Cues.Found> names = new HashMap<>();
    private final List<Clause> found = new ArrayList<>();

    private Clauses(
            Narration notes,
            List<Token> tokens,
            List<Cues.Found> shown,
            List<Cues.Found> named,
            List<Cues.Found> parted) {
        this.notes = notes;
        this.tokens = tokens;
        shown.stream().filter(f -> f.act() == Cues.Act.BREAK).forEach(f -> breaks.put(f.first(), f.act()));
        named.forEach(f -> names.putIfAbsent(f.first(), f));
        parted.stream()
                .filter(f -> f.act() == Cues.Act.BOUNDARY
                        || (f.act() == Cues.Act.REPLAY && !f.value().equals("first")))
                .forEach(f -> breaks.put(f.first(), f.act()));
    }

    static List<Clause> of(
            Narration notes,
            List<Token> tokens,
            List<Cues.Found> shown,
            List<Cues.Found> named,
            List<Cues.Found> parted) {
        Clauses clauses = new Clauses(notes, tokens, shown, named, parted);
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
            } else if (i > start && (breaks.containsKey(i) || isNewSubject(i, start, spoken) || isAfterComma(i))) {
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
        boolean joined = i > 0 && JOINS.contains(tokens.get(i - 1).key());
        if (name == null || !(spoken || joined) || i - start < 2) {
            return false;
        }
        boolean object = i > 0 && names.containsKey(i - 1);
        return !object && isSubject(name);
    }

    private boolean isAfterComma(int i) {
        Cues.Found name = names.get(i);
        boolean comma = i > 0 && !tokens.get(i - 1).word();
        return comma && name != null && isSubject(name);
    }

    private boolean isSubject(Cues.Found name) {
        String key = tokens.get(name.first()).key();
        return name.act() != Cues.Act.PRONOUN || !(key.equals("him") || key.equals("his") || key.equals("himself"));
    }
}
