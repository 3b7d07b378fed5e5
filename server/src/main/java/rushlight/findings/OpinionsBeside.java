package rushlight.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.film.Opinion;
import rushlight.knowledge.Claim;
import rushlight.knowledge.Taxonomy;

/**
 * Puts opinions beside the findings they claim. An opinion that nothing claims as it was said speaks against what its opposite
 * claims: "he sets the edge" is no claim of a gap, and denies the one that he does not.
 */
public final class OpinionsBeside {
    private final List<Claim> claims;
    private final Taxonomy taxonomy;

    /** By the claims of a book. */
    public OpinionsBeside(List<Claim> claims, Taxonomy taxonomy) {
        this.claims = List.copyOf(claims);
        this.taxonomy = taxonomy;
    }

    /** Which finding is spoken of, and whether it is said to hold. */
    private record Meant(String finding, boolean holds) {}

    /** What was said of the player of an assessment; the assessment stays as it is. */
    public Spoken beside(Assessment assessment, List<Opinion> opinions) {
        Map<String, List<Spoken.Said>> said = new TreeMap<>();
        List<Opinion> apart = new ArrayList<>();
        for (Opinion opinion : opinions) {
            List<Meant> meant = meant(opinion).stream()
                    .filter(one -> assessment.finding(one.finding()).isPresent())
                    .toList();
            for (Meant one : meant) {
                Judged judged = assessment.finding(one.finding()).orElseThrow();
                said.computeIfAbsent(one.finding(), f -> new ArrayList<>()).add(said(opinion, one.holds(), judged));
            }
            if (meant.isEmpty()) {
                apart.add(opinion);
            }
        }
        said.replaceAll((finding, all) -> List.copyOf(all));
        return new Spoken(said, apart);
    }

    private List<Meant> meant(Opinion opinion) {
        if (opinion.polarity() == Opinion.Polarity.UNSURE) {
            return List.of();
        }
        boolean does = opinion.polarity() == Opinion.Polarity.DOES;
        List<Meant> asSaid = meant(opinion, does, true);
        return asSaid.isEmpty() ? meant(opinion, !does, false) : asSaid;
    }

    /** The first claim that fits; those against something come before those against anything. */
    private List<Meant> meant(Opinion opinion, boolean does, boolean holds) {
        return claims.stream()
                .filter(claim -> claim.says(opinion.concept(), does, opinion.against(), taxonomy))
                .limit(1)
                .map(claim -> new Meant(claim.finding(), holds))
                .toList();
    }

    private static Spoken.Said said(Opinion opinion, boolean holds, Judged judged) {
        Agreement agreement = switch (judged.verdict()) {
            case CONFIRMED, LIKELY -> holds ? Agreement.AGREES : Agreement.DISAGREES;
            case CLEARED -> holds ? Agreement.DISAGREES : Agreement.AGREES;
            case WATCH, NOT_ENOUGH_TAPE -> Agreement.NOT_ENOUGH_TAPE;
        };
        return new Spoken.Said(opinion, agreement, quoted(opinion) + " " + answer(agreement, judged));
    }

    /** Who said what. */
    public static String quoted(Opinion opinion) {
        String who = opinion.speaker().isEmpty() ? "The notes say" : opinion.speaker() + " said";
        return who + ": \u201C" + opinion.words() + "\u201D";
    }

    private static String answer(Agreement agreement, Judged judged) {
        Rate rate = judged.outcome().rate();
        String of = "\u201C" + judged.finding().shown() + "\u201D";
        String count = of + ", " + rate.events() + " of " + rate.opportunities();
        return switch (agreement) {
            case AGREES -> "The log agrees: " + count + ", " + word(judged) + ".";
            case DISAGREES -> "The log does not: " + count + ", " + word(judged) + ".";
            case NOT_ENOUGH_TAPE ->
                rate.opportunities() == 0
                        ? "The log has no chance of " + of + " yet: not enough tape."
                        : "The log has " + rate.events() + " of " + rate.opportunities() + " for " + of
                                + (judged.verdict() == Verdict.WATCH ? ": still open." : ": not enough tape.");
        };
    }

    private static String word(Judged judged) {
        return judged.verdict().slug().replace('-', ' ');
    }
}
