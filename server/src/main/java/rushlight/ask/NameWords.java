package rushlight.ask;

import java.util.Set;
import rushlight.words.Matcher;
import rushlight.words.Tokenizer;

/** Finds the names of the folder at hand: a prospect by any part of his name, all else by the whole. */
final class NameWords {
    private NameWords() {}

    static Matcher<Sense> of(Tokenizer tokenizer, People people) {
        var builder = new Matcher.Builder<Sense>(tokenizer);
        people.prospects().forEach((id, name) -> {
            Sense.Name sense = new Sense.Name(Sense.Name.Kind.PROSPECT, id, name);
            builder.add(name, sense).add(id, sense);
            for (String word : name.split("\\s+", -1)) {
                if (word.length() > 2) {
                    builder.add(word, sense);
                }
            }
        });
        people.games().forEach((id, name) -> builder.add(name, new Sense.Name(Sense.Name.Kind.GAME, id, name)));
        add(builder, people.opponents(), Sense.Name.Kind.OPPONENT);
        add(builder, people.teams(), Sense.Name.Kind.TEAM);
        add(builder, people.classYears(), Sense.Name.Kind.CLASS_YEAR);
        add(builder, people.levels(), Sense.Name.Kind.LEVEL);
        return builder.build();
    }

    private static void add(Matcher.Builder<Sense> builder, Set<String> names, Sense.Name.Kind kind) {
        names.forEach(name -> builder.add(name, new Sense.Name(kind, name, name)));
    }
}
