package rushlight.ask;

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
        people.opponents().forEach(name -> builder.add(name, new Sense.Name(Sense.Name.Kind.OPPONENT, name, name)));
        people.levels().forEach(name -> builder.add(name, new Sense.Name(Sense.Name.Kind.LEVEL, name, name)));
        return builder.build();
    }
}
