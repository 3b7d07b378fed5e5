package rushlight.ask;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.evidence.Verdict;
import rushlight.findings.Counting;
import rushlight.findings.FindingBook;
import rushlight.findings.Polarity;
import rushlight.findings.Severity;
import rushlight.situation.Situation;

/** The judged questions with the readings that are right, as values: the notation is told at the head of questions.tsv. */
final class RightReadings {
    private final FindingBook findings;
    private final Map<String, String> games;

    RightReadings(FindingBook findings, Map<String, String> games) {
        this.findings = findings;
        this.games = games;
    }

    Map<String, Asked> all() {
        Map<String, Asked> all = new LinkedHashMap<>();
        for (String[] cells : rows("questions.tsv")) {
            List<Filter> filters = new ArrayList<>();
            if (!cells[5].equals("-")) {
                Arrays.stream(cells[5].split(";", -1)).forEach(text -> filters.add(filter(text)));
            }
            Find find = Find.valueOf(cells[2].toUpperCase(Locale.ROOT));
            all.put(cells[0], new Asked(cells[1], find, "", pair(cells[3], cells[4]), filters, List.of(), List.of()));
        }
        return all;
    }

    /** The rows of a file of the judged set, without remarks and its header. */
    static List<String[]> rows(String file) {
        try (InputStream in = RightReadings.class.getResourceAsStream("/ask/" + file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split("\t", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private Optional<SituationPair> pair(String opportunity, String event) {
        if (opportunity.equals("-")) {
            return Optional.empty();
        }
        Situation chance = chance(opportunity);
        return Optional.of(new SituationPair(chance, event.equals("=") ? chance : situation(event)));
    }

    /** What a finding counts, its duties included, and whatever else is asked for; or plain conditions. */
    private Situation chance(String text) {
        if (!text.startsWith("@")) {
            return situation(text);
        }
        String[] parts = text.substring(1).split(" & ", 2);
        Counting.Scope scope = scope(parts[0]);
        List<Situation> all = new ArrayList<>(List.of(scope.opportunity()));
        if (!scope.duties().isEmpty()) {
            all.add(Situation.anyOf("assignment", scope.duties()));
        }
        if (parts.length > 1) {
            all.add(situation(parts[1]));
        }
        return Situation.all(all);
    }

    private Counting.Scope scope(String finding) {
        return findings.finding(finding).orElseThrow().counting().scope().orElseThrow();
    }

    private Situation situation(String text) {
        List<Situation> parts = new ArrayList<>();
        for (String part : text.split(" & ", -1)) {
            parts.add(condition(part));
        }
        return Situation.all(parts);
    }

    private Situation condition(String text) {
        if (text.startsWith("@")) {
            return scope(text.substring(1)).event();
        }
        if (text.startsWith("!")) {
            return Situation.not(condition(text.substring(1)));
        }
        if (text.startsWith("(")) {
            return Situation.any(
                    Arrays.stream(text.substring(1, text.length() - 1).split(" / ", -1))
                            .map(this::condition)
                            .toList());
        }
        int colon = text.indexOf(':');
        if (colon > 0) {
            String[] ends = text.substring(colon + 1).split("\\.\\.", -1);
            return new Situation.Between(
                    text.substring(0, colon),
                    OptionalInt.of(Integer.parseInt(ends[0])),
                    OptionalInt.of(Integer.parseInt(ends[1])));
        }
        int equals = text.indexOf('=');
        return Situation.anyOf(
                text.substring(0, equals), List.of(text.substring(equals + 1).split("\\|", -1)));
    }

    private Filter filter(String text) {
        int equals = text.indexOf('=');
        String value = text.substring(equals + 1);
        List<String> values = List.of(value.split(",", -1));
        String[] words = value.split(" ", -1);
        return switch (text.substring(0, equals)) {
            case "about" ->
                new Filter.About(
                        Filter.Relation.valueOf(
                                words[0].toUpperCase(Locale.ROOT).replace('-', '_')),
                        List.of(words[1].split(",", -1)));
            case "kinds" -> new Filter.Kinds(Set.copyOf(values));
            case "prospects" -> new Filter.Prospects(values);
            case "games" ->
                new Filter.Games(games.keySet().stream()
                        .filter(id -> values.stream().anyMatch(id::startsWith))
                        .toList());
            case "opponents" -> new Filter.Opponents(values);
            case "at-least" ->
                new Filter.AtLeast(
                        Filter.Counted.valueOf(words[0].toUpperCase(Locale.ROOT)), Integer.parseInt(words[1]));
            case "top" -> new Filter.Top(Integer.parseInt(value));
            case "order" -> new Filter.Order(Filter.Direction.valueOf(value.toUpperCase(Locale.ROOT)));
            case "verdicts" ->
                new Filter.Verdicts(values.stream()
                        .map(v -> Verdict.valueOf(v.toUpperCase(Locale.ROOT).replace('-', '_')))
                        .collect(Collectors.toSet()));
            case "findings" -> new Filter.Findings(values);
            case "polarities" ->
                new Filter.Polarities(values.stream()
                        .map(v -> Polarity.valueOf(v.toUpperCase(Locale.ROOT)))
                        .collect(Collectors.toSet()));
            case "severities" ->
                new Filter.Severities(values.stream()
                        .map(v -> Severity.valueOf(v.toUpperCase(Locale.ROOT)))
                        .collect(Collectors.toSet()));
            case "note" -> new Filter.Note(value);
            case "sides" -> sides(value.split(" / ", -1));
            default -> throw new IllegalArgumentException(text);
        };
    }

    private Filter sides(String[] sides) {
        return new Filter.Sides(condition(sides[0]), sides[0], condition(sides[1]), sides[1]);
    }
}
