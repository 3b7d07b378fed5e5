package rushlight.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Findings that rest on others: their counts are those of the findings a rule concluded them from. */
final class Concluding {
    private final FindingBook book;

    Concluding(FindingBook book) {
        this.book = book;
    }

    /** A finding that nothing was concluded of. */
    static Judged unsaid(Finding finding, Counts counts) {
        Outcome outcome = new Outcome(
                Verdict.NOT_ENOUGH_TAPE,
                new Rate(0, 0),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                false,
                List.of(),
                Optional.empty());
        return new Judged(
                finding,
                outcome,
                0,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Evidence(counts.tape(), Sample.NONE),
                "It follows from other findings, and they do not say it yet.");
    }

    /** Adds the findings that only a rule can say: their reps are those of the findings it rests on. */
    void concluded(ProspectRules.Concluded concluded, Map<String, Judged> judged, Counts counts) {
        for (Assessment.Conclusion conclusion : concluded.is()) {
            book.finding(conclusion.slug()).filter(finding -> !finding.counts()).ifPresent(finding -> {
                Judged before = judged.get(finding.slug());
                Judged now = concluded(finding, conclusion, judged, counts);
                judged.put(finding.slug(), before == null || surer(now, before) ? now : before);
            });
        }
    }

    private static boolean surer(Judged now, Judged before) {
        return now.verdict() == Verdict.CONFIRMED && before.verdict() != Verdict.CONFIRMED;
    }

    private Judged concluded(
            Finding finding, Assessment.Conclusion conclusion, Map<String, Judged> judged, Counts counts) {
        List<Judged> from = conclusion.from().stream()
                .map(judged::get)
                .filter(one -> one != null)
                .toList();
        Sample sample = from.stream().map(one -> one.evidence().sample()).reduce(Sample.NONE, Sample::or);
        Verdict leastSure = from.stream()
                .map(Judged::verdict)
                .min((a, b) -> Integer.compare(sureness(a), sureness(b)))
                .orElse(Verdict.WATCH);
        Rate rate = sample.rate();
        Outcome outcome = new Outcome(
                leastSure,
                rate,
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                false,
                from.stream()
                        .map(one -> new Outcome.Row(
                                one.finding().slug(), one.outcome().rate()))
                        .toList(),
                Optional.empty());
        return new Judged(
                finding,
                outcome,
                sample.games(counts.games()),
                counts.heavyOpponent(sample.opportunities()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Evidence(counts.tape(), sample),
                Sentences.together(conclusion.sentence(), from));
    }

    private static int sureness(Verdict verdict) {
        return switch (verdict) {
            case NOT_ENOUGH_TAPE, CLEARED -> 0;
            case WATCH -> 1;
            case LIKELY -> 2;
            case CONFIRMED -> 3;
        };
    }

    static Judged linked(Judged judged, ProspectRules.Concluded concluded) {
        Set<String> mixed = concluded.mixed().getOrDefault(judged.finding().slug(), Set.of());
        Set<String> rooted = concluded.rooted().getOrDefault(judged.finding().slug(), Set.of());
        return mixed.isEmpty() && rooted.isEmpty() ? judged : judged.with(List.copyOf(mixed), List.copyOf(rooted));
    }
}
