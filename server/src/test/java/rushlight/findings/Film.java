package rushlight.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Sighting;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/** A small tape for tests, told rep by rep. Everything was seen unless a rep says {@code hidden=}. */
final class Film {
    private final Taxonomy taxonomy;
    private final List<TapedGame> games = new ArrayList<>();
    private final List<Sighting> sightings = new ArrayList<>();
    private final List<RepFacts> facts = new ArrayList<>();

    Film(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** A new game; the reps that follow are from it. */
    Film game(String name, String opponent) {
        games.add(new TapedGame(name, name, Optional.empty(), opponent, new BitSet()));
        return this;
    }

    /** So many reps alike, as {@code facet=value} words; a facet may stand twice. */
    Film reps(int times, String words) {
        for (int i = 0; i < times; i++) {
            TapedGame game = games.get(games.size() - 1);
            game.reps().set(facts.size());
            String rep = "r" + (facts.size() + 1);
            sightings.add(new Sighting(
                    rep,
                    game.name(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
            facts.add(facts(new RepId("he", game.id(), rep), words));
        }
        return this;
    }

    Tape tape() {
        return Tape.of(Prospect.named("he", "Tam Orrin"), games, sightings, facts);
    }

    private RepFacts facts(RepId rep, String words) {
        Map<String, Set<String>> tagged = new HashMap<>();
        Map<String, Set<String>> closed = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        Set<String> seen =
                new TreeSet<>(taxonomy.film().ofFacet("notSeen").orElseThrow().oneOf());
        for (String word : Arrays.asList(words.split(" "))) {
            String facet = word.substring(0, word.indexOf('='));
            String value = word.substring(word.indexOf('=') + 1);
            if (facet.equals("hidden")) {
                seen.remove(value);
            } else if (value.matches("\\d+")) {
                numbers.put(facet, Integer.parseInt(value));
            } else {
                tagged.computeIfAbsent(facet, f -> new HashSet<>()).add(value);
            }
        }
        tagged.putIfAbsent("assignmentSource", Set.of(tagged.containsKey("assignment") ? "stated" : "unknown"));
        tagged.put("seen", seen);
        tagged.forEach((facet, values) -> {
            Set<String> wider = new HashSet<>();
            values.forEach(value -> wider.addAll(taxonomy.closure(value)));
            closed.put(facet, wider);
        });
        return new RepFacts(rep, "someone", tagged, closed, numbers);
    }
}
