package rushlight.report.prospect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Primary;
import rushlight.knowledge.Taxonomy;

/** Sentences that an evaluator may take into his summary: each says no more than its count has earned. */
public final class Suggested {
    private static final int MOST = 4;

    private Suggested() {}

    /** His main rush, what he does well, what he lacks, what hangs on his duty; those that matter most first. */
    public static List<String> sentences(Assessment assessment, Taxonomy taxonomy) {
        List<Judged> inOrder =
                assessment.findings().stream().sorted(Judged.mostTellingFirst()).toList();
        List<String> sentences = new ArrayList<>();
        assessment.primary().ifPresent(primary -> sentences.add(main(primary, taxonomy)));
        inOrder.stream().filter(Sorts::isSafety).forEach(one -> sentences.add("Safety first: " + claim(one)));
        told(inOrder.stream().filter(Sorts::isStrength)).forEach(sentences::add);
        told(inOrder.stream().filter(one -> Sorts.isGap(one) && !Sorts.isSafety(one)))
                .forEach(sentences::add);
        inOrder.stream()
                .filter(Sorts::hangsOnDuty)
                .limit(1)
                .forEach(one -> one.finding()
                        .advice()
                        .question()
                        .ifPresent(question -> sentences.add("To ask his coach: " + question)));
        return sentences;
    }

    private static Stream<String> told(Stream<Judged> some) {
        return some.limit(MOST)
                .map(one -> one.verdict() == Verdict.LIKELY ? "Probably: " + lower(claim(one)) : claim(one));
    }

    private static String main(Primary primary, Taxonomy taxonomy) {
        return "His main rush is the " + taxonomy.shown(primary.move()) + " ("
                + primary.rate().events() + " of " + primary.rate().opportunities() + " first moves).";
    }

    /** The finding's own sentence with its counts; its name with them where it has none. */
    private static String claim(Judged one) {
        Rate rate = one.outcome().rate();
        String counts = rate.events() + " of " + rate.opportunities();
        String said = one.finding()
                .advice()
                .said(rate)
                .filter(words -> one.outcome().share().isPresent())
                .orElse(Entries.capital(one.finding().shown()) + " (" + counts + ").");
        return said.endsWith(".") ? said : said + ".";
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
