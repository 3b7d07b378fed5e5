package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.agreement.Agreed;
import rushlight.agreement.Coefficient;
import rushlight.agreement.CrossCheck;
import rushlight.agreement.Difference;
import rushlight.agreement.FacetAgreement;
import rushlight.agreement.MatchedGame;
import rushlight.agreement.TagAgreement;
import rushlight.evidence.Interval;
import rushlight.film.Reading;

/**
 * How far two evaluators agree, as programs read it.
 *
 * @param first name of the first evaluator
 * @param second name of the second
 * @param common reps both have read
 * @param games games both have read of a prospect
 * @param facets a column each
 * @param differences reps they read differently
 */
public record AgreeAnswer(
        String first,
        String second,
        int common,
        List<SharedGame> games,
        List<Facet> facets,
        List<Differing> differences) {
    /** A game both have read: how many reps both did, and the reps only one of them has. */
    public record SharedGame(
            String prospect,
            String id,
            String game,
            int common,
            List<String> firstAlone,
            List<String> secondAlone,
            List<Proposed> proposals) {}

    /** Two names that may be of one rep, and what they have in common: {@code snap}, {@code clip} or {@code clock}. */
    public record Proposed(String first, String second, String why) {}

    /** Agreement beyond chance, 1 at most, with its range of 90 %. */
    public record Beyond(double value, OptionalDouble low, OptionalDouble high) {}

    /**
     * One column.
     *
     * @param common reps for which both said something
     * @param same reps among them for which both said the same
     * @param alpha null under 30 common reps, or where one thing only was said
     * @param masi the same by a stricter distance, for columns of several tags
     * @param ac1 where one label makes up more than four fifths
     * @param kappa for columns of one value
     * @param trust {@code too-few}, {@code no-variety}, {@code low}, {@code tentative} or {@code good}
     */
    public record Facet(
            String column,
            int common,
            int same,
            Optional<Beyond> alpha,
            Optional<Beyond> masi,
            Optional<Beyond> ac1,
            OptionalDouble kappa,
            String trust,
            List<Tag> tags) {}

    /** One tag of a column that holds several. */
    public record Tag(
            String tag,
            int both,
            int firstOnly,
            int secondOnly,
            int common,
            Optional<Beyond> alpha,
            Optional<Beyond> ac1,
            String trust) {}

    /** A rep they read differently, under the name either has for it. */
    public record Differing(String prospect, String game, String rep, String secondRep, List<Difference.Cell> cells) {}

    /** The answer for one cross-check. */
    public static AgreeAnswer of(CrossCheck check) {
        return new AgreeAnswer(
                check.first(),
                check.second(),
                check.pairs().size(),
                check.games().stream().map(AgreeAnswer::game).toList(),
                check.facets().stream().map(AgreeAnswer::facet).toList(),
                check.differences().stream().map(AgreeAnswer::differing).toList());
    }

    private static SharedGame game(MatchedGame game) {
        return new SharedGame(
                game.prospect().name(),
                game.prospect().id(),
                game.game().name(),
                game.pairs().size(),
                names(game.firstAlone()),
                names(game.secondAlone()),
                game.proposals().stream()
                        .map(one -> new Proposed(
                                one.first().rep(), one.second().rep(), one.why().slug()))
                        .toList());
    }

    private static List<String> names(List<Reading> readings) {
        return readings.stream().map(reading -> reading.rep().rep()).toList();
    }

    private static Facet facet(FacetAgreement facet) {
        Agreed agreed = facet.agreed();
        return new Facet(
                facet.column(),
                agreed.common(),
                agreed.same(),
                agreed.alpha().map(AgreeAnswer::beyond),
                facet.tags().isEmpty()
                        ? Optional.empty()
                        : facet.strict().alpha().map(AgreeAnswer::beyond),
                agreed.ac1().map(AgreeAnswer::beyond),
                agreed.kappa(),
                agreed.trust().slug(),
                facet.tags().stream().map(AgreeAnswer::tag).toList());
    }

    private static Tag tag(TagAgreement tag) {
        return new Tag(
                tag.tag(),
                tag.both(),
                tag.firstOnly(),
                tag.secondOnly(),
                tag.agreed().common(),
                tag.agreed().alpha().map(AgreeAnswer::beyond),
                tag.agreed().ac1().map(AgreeAnswer::beyond),
                tag.agreed().trust().slug());
    }

    private static Differing differing(Difference difference) {
        Reading first = difference.pair().first();
        return new Differing(
                first.rep().prospect(),
                first.rep().game(),
                first.rep().rep(),
                difference.pair().second().rep().rep(),
                difference.cells());
    }

    private static Beyond beyond(Coefficient one) {
        return new Beyond(
                one.value(),
                end(one.likely().map(Interval::low)),
                end(one.likely().map(Interval::high)));
    }

    private static OptionalDouble end(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
