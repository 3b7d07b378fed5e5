package rushlight.film.csv;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.film.Times;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** Logs with any value a column may have, from a seed. */
final class RandomLogs {
    private static final List<String> NASTY = List.of(
            "=HYPERLINK(\"x\")",
            "+1",
            "-1",
            "@now",
            "\tx",
            "'=1",
            "''=1",
            "'",
            "\"",
            "a,b",
            "a;b",
            "line\nline",
            "line\r\nline",
            " blank ",
            "'plain'",
            "caf\u00e9 \u2014 \ud83c\udfc8",
            "<script>",
            "#",
            "\\",
            "\u00a0",
            "x\r",
            "true",
            "007");
    private static final List<String> HANDS = List.of("inside", "outside", "left", "right");
    private static final Set<String> MADE_APART = Set.of(
            "rep",
            "prospect",
            "game",
            "date",
            "level",
            "opponent",
            "evaluator",
            "start",
            "end",
            "assignment",
            "assignment_source",
            "not_seen");

    private final Taxonomy book;
    private final Random random;
    private final Set<String> charted = new HashSet<>();

    RandomLogs(Taxonomy book, long seed) {
        this.book = book;
        this.random = new Random(seed);
        book.film().all().stream()
                .filter(column -> column.list() && !column.name().equals("not_seen") && random.nextBoolean())
                .forEach(column -> charted.add(column.name()));
    }

    /** A few logs in which the same columns were charted. */
    List<Log> logs() {
        List<Log> logs = new ArrayList<>();
        for (int game = 0; game < 1 + random.nextInt(3); game++) {
            Optional<LocalDate> date = random.nextBoolean()
                    ? Optional.of(LocalDate.of(2025, 9, 1 + random.nextInt(28)))
                    : Optional.empty();
            String slug = "-game-no-" + game;
            String id = slug.substring(1) + date.map(day -> "-" + day).orElse("");
            Game played = new Game(
                    id, slug.replace('-', ' ').strip(), date, one(NASTY).strip().replaceAll("\\s+", " "), "");
            for (int reader = 0; reader < 2; reader++) {
                logs.add(log(played, "'=reader " + reader));
            }
        }
        return logs;
    }

    private Log log(Game game, String evaluator) {
        Prospect prospect = Prospect.named("oren-halloway", "=Oren Halloway");
        List<Reading> readings = new ArrayList<>();
        for (int rep = 0; rep < 1 + random.nextInt(12); rep++) {
            RepId id = new RepId(prospect.id(), game.id(), one(List.of("", "-", "=")) + "r" + rep);
            readings.add(new Reading(id, evaluator, tags(rep), exchange()));
        }
        return new Log(evaluator, prospect, game, charted, readings, new Log.Source("log.csv", ""));
    }

    private Map<String, List<String>> tags(int rep) {
        Map<String, List<String>> tags = new HashMap<>();
        for (Column column : book.film().all()) {
            if (!MADE_APART.contains(column.name())
                    && column.kind() != Column.Kind.EXCHANGE
                    && (!column.list() || charted.contains(column.name()))
                    && (column.required() || random.nextInt(3) > 0)) {
                tags.put(column.name(), values(column));
            }
        }
        tags.put("snap", List.of(Integer.toString(rep + 1)));
        tags.put(
                "start",
                List.of(Times.film(Integer.toString(random.nextInt(5000))).orElseThrow()));
        tags.put("end", List.of(Times.film(5000 + random.nextInt(5000) + ".25").orElseThrow()));
        boolean duty = random.nextBoolean();
        tags.put("assignment_source", List.of(duty ? one(List.of("stated", "inferred")) : "unknown"));
        tags.put("assignment", List.of(duty ? "spill-assignment" : "assignment-unknown"));
        if (random.nextInt(4) == 0) {
            tags.put("not_seen", List.of("hands", "faults"));
        }
        return tags;
    }

    private List<String> values(Column column) {
        int count = column.list() ? 1 + random.nextInt(3) : 1;
        return random.ints(count * 4L)
                .mapToObj(i -> value(column))
                .distinct()
                .limit(count)
                .toList();
    }

    private String value(Column column) {
        return switch (column.kind()) {
            case TEXT ->
                column.name().equals("note")
                        ? one(NASTY) + one(NASTY)
                        : one(NASTY).strip() + "v";
            case INTEGER -> column.oneOf().isEmpty() ? Integer.toString(random.nextInt(99)) : one(column.oneOf());
            case CLOCK -> random.nextInt(15) + ":" + (10 + random.nextInt(50));
            case WORDS -> one(column.oneOf());
            case CONCEPT -> concept(column);
            case DATE, TIME, EXCHANGE -> throw new IllegalArgumentException(column.name());
        };
    }

    private String concept(Column column) {
        if (!column.oneOf().isEmpty()) {
            return one(column.oneOf());
        }
        return one(ofClasses(column.classes()).stream()
                .filter(slug -> column.narrowerThan().isEmpty()
                        || book.isA(slug, column.narrowerThan().get()))
                .toList());
    }

    private List<Step> exchange() {
        List<Step> steps = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            boolean his = random.nextBoolean();
            Set<String> classes = book.film().stepFacets().stream()
                    .filter(facet -> facet.by().equals(his ? "him" : "blocker"))
                    .flatMap(facet -> facet.classes().stream())
                    .collect(Collectors.toSet());
            Optional<String> hand = his && random.nextBoolean() ? Optional.of(one(HANDS)) : Optional.empty();
            steps.add(new Step(his ? Step.By.HIM : Step.By.BLOCKER, one(ofClasses(classes)), hand));
        }
        return steps;
    }

    private List<String> ofClasses(Set<String> classes) {
        return classes.stream()
                .flatMap(name -> book.ofClass(name).stream())
                .map(Concept::slug)
                .distinct()
                .sorted()
                .toList();
    }

    private String one(List<String> values) {
        return values.get(random.nextInt(values.size()));
    }
}
