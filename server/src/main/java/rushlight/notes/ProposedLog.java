package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/**
 * The reps of some notes as rows of a film log, to look at and to import. Only what was said to have happened is charted:
 * a list column in which nothing was said counts as not seen on that rep; what was denied, wished or doubted stands in the
 * note of the rep.
 */
public final class ProposedLog {
    /** The columns, in order. */
    public static final List<String> HEADER = List.of(
            "rep",
            "prospect",
            "game",
            "video",
            "start",
            "end",
            "phase",
            "alignment",
            "stance",
            "help",
            "exchange",
            "faults",
            "results",
            "not_seen",
            "evaluator",
            "note");

    private static final List<String> LISTS = List.of("help", "results", "faults");

    private final Taxonomy taxonomy;

    private ProposedLog(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** By the columns of this book. */
    public static ProposedLog of(Taxonomy taxonomy) {
        return new ProposedLog(taxonomy);
    }

    /** Whose film it is, and which. */
    public record Heading(String prospect, String game, String video, String evaluator) {}

    /** One row a rep, with a cell for every column of the header. */
    public List<List<String>> rows(Notes notes, Heading heading) {
        return rows(notes.reps().stream().map(ReviewedRep::of).toList(), heading);
    }

    /** The same of reps as a person left them. */
    public List<List<String>> rows(List<ReviewedRep> reps, Heading heading) {
        return reps.stream().map(rep -> row(rep.part(), rep.rep(), heading)).toList();
    }

    private List<String> row(String part, ProposedRep rep, Heading heading) {
        Map<String, List<String>> cells = new LinkedHashMap<>();
        List<String> exchange = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (Mention said : asDone(rep.tags())) {
            if (said.assertion() != Assertion.PERFORMED || said.actor() == Actor.OTHER) {
                left.add(said.assertion().slug() + ": " + taxonomy.label(said.concept()));
            } else {
                chart(said, cells, exchange, left);
            }
        }
        Map<String, String> row = new HashMap<>();
        row.put("rep", String.format("r%02d", rep.ordinal()) + part);
        row.put("prospect", heading.prospect());
        row.put("game", heading.game());
        row.put("evaluator", heading.evaluator());
        boolean timed = rep.start().isPresent() && !heading.video().isEmpty();
        row.put("video", timed ? heading.video() : "");
        row.put("start", time(rep.start()));
        row.put("end", time(rep.end()));
        row.put("phase", rep.phase().orElse(""));
        row.put("exchange", String.join(" > ", exchange));
        cells.forEach(
                (column, values) -> row.put(column, values.stream().distinct().collect(Collectors.joining(";"))));
        row.put(
                "not_seen",
                LISTS.stream().filter(list -> !cells.containsKey(list)).collect(Collectors.joining(";")));
        row.put("note", String.join("; ", left));
        return HEADER.stream().map(column -> row.getOrDefault(column, "")).toList();
    }

    /** With his steps in the order they were done; those of reps that were joined stand as they were told. */
    private static List<Mention> asDone(List<Mention> told) {
        List<Mention> steps = told.stream().filter(said -> said.order() > 0).toList();
        if (steps.stream().map(Mention::order).distinct().count() < steps.size()) {
            return told;
        }
        Iterator<Mention> done =
                steps.stream().sorted(Comparator.comparingInt(Mention::order)).iterator();
        return told.stream().map(said -> said.order() > 0 ? done.next() : said).toList();
    }

    private void chart(Mention said, Map<String, List<String>> cells, List<String> exchange, List<String> left) {
        Optional<String> list = LISTS.stream()
                .filter(name -> isOf(said, name) && (said.actor() == Actor.PROSPECT) != name.equals("help"))
                .filter(name -> !name.equals("help") || taxonomy.isA(said.concept(), HELP))
                .findFirst();
        if (list.isPresent()) {
            cells.computeIfAbsent(list.get(), c -> new ArrayList<>()).add(said.concept());
            if (isBlockToo(said)) {
                exchange.add(step(said));
            }
        } else if (isOf(said, "exchange")) {
            exchange.add(step(said));
        } else if (isOf(said, "alignment") && !cells.containsKey("alignment")) {
            cells.put("alignment", List.of(said.concept()));
        } else if (isOf(said, "stance") && !cells.containsKey("stance")) {
            cells.put("stance", List.of(said.concept()));
        } else {
            left.add("said: " + taxonomy.label(said.concept()));
        }
    }

    private static final String HELP = "protection-help";

    private static String step(Mention said) {
        String hand =
                said.hand().filter(h -> !h.equals("both")).map(h -> "@" + h).orElse("");
        return said.actor() == Actor.BLOCKER ? "[" + said.concept() + "]" : said.concept() + hand;
    }

    /** Help that is a block of its own stands in the exchange as well. */
    private boolean isBlockToo(Mention said) {
        Column help = taxonomy.film().named("help").orElseThrow();
        return isOf(said, "exchange")
                && taxonomy.concept(said.concept()).stream()
                        .flatMap(concept -> concept.classes().stream())
                        .anyMatch(name -> taxonomy.film().exchange().classes().contains(name)
                                && !help.classes().contains(name));
    }

    private boolean isOf(Mention said, String column) {
        Column own = taxonomy.film().named(column).orElseThrow();
        return taxonomy.concept(said.concept()).map(Concept::classes).stream()
                .flatMap(java.util.Collection::stream)
                .anyMatch(own.classes()::contains);
    }

    private static String time(OptionalDouble seconds) {
        if (seconds.isEmpty()) {
            return "";
        }
        long tenths = Math.round(seconds.getAsDouble() * 10);
        long whole = tenths / 10;
        String minutes = whole >= 3600
                ? String.format("%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60)
                : String.format("%d:%02d", whole / 60, whole % 60);
        return tenths % 10 == 0 ? minutes : minutes + "." + tenths % 10;
    }
}
