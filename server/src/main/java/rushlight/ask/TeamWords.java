package rushlight.ask;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rushlight.words.Lexicon;
import rushlight.words.Match;
import rushlight.words.Token;

/** Tells whether the name of a team means the players' own or the one they met: by the word before it, else by who is known. */
final class TeamWords {
    private final Map<String, Sense.Name.Kind> before = new HashMap<>();

    TeamWords() {
        Lexicon.named("team-words", "word", "team")
                .rows()
                .forEach(row -> before.put(
                        row.get(0), row.get(1).equals("own") ? Sense.Name.Kind.TEAM : Sense.Name.Kind.OPPONENT));
    }

    /** The meanings of some words, a team among them being one team and not two. */
    List<Sense> decided(Match<Sense> match, List<Token> tokens) {
        List<Sense> senses = match.values();
        boolean own = senses.stream().anyMatch(sense -> isName(sense, Sense.Name.Kind.TEAM));
        if (!own && senses.stream().noneMatch(sense -> isName(sense, Sense.Name.Kind.OPPONENT))) {
            return senses;
        }
        Sense.Name.Kind known = own ? Sense.Name.Kind.TEAM : Sense.Name.Kind.OPPONENT;
        Sense.Name.Kind kind = match.first() == 0
                ? known
                : before.getOrDefault(tokens.get(match.first() - 1).key(), known);
        return senses.stream().map(sense -> of(sense, kind)).distinct().toList();
    }

    private static Sense of(Sense sense, Sense.Name.Kind kind) {
        boolean team = isName(sense, Sense.Name.Kind.TEAM) || isName(sense, Sense.Name.Kind.OPPONENT);
        return team && sense instanceof Sense.Name name ? new Sense.Name(kind, name.id(), name.shown()) : sense;
    }

    private static boolean isName(Sense sense, Sense.Name.Kind kind) {
        return sense instanceof Sense.Name name && name.kind() == kind;
    }
}
