package rushlight.agreement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;
import rushlight.evidence.raters.Ac1;
import rushlight.evidence.raters.Alpha;
import rushlight.evidence.raters.Distance;
import rushlight.evidence.raters.Kappa;
import rushlight.evidence.raters.Ratings;

/** Turns what two evaluators said into {@link Agreed}: a coefficient from {@value Trust#ENOUGH} common reps on. */
final class Counted {
    /** Above this share of one label alpha and kappa fall however well two agree, and AC1 decides. */
    private static final double LOPSIDED = 0.8;

    private Counted() {}

    /** Labels of one kind or another, sets of tags among them. */
    static <T> Agreed by(Ratings<T> ratings, Distance<T> distance, boolean withKappa) {
        Ratings<T> common = ratings.common();
        OptionalDouble alpha = enough(common) ? Alpha.of(common, distance) : OptionalDouble.empty();
        return agreed(
                common, alpha, alpha.isPresent() ? Alpha.interval(common, distance) : Optional.empty(), withKappa);
    }

    /** The same without ranges and kappa, for the many coefficients of which few are ever read. */
    static <T> Agreed plain(Ratings<T> ratings, Distance<T> distance) {
        Ratings<T> common = ratings.common();
        Optional<Coefficient> alpha =
                enough(common) ? coefficient(Alpha.of(common, distance), Optional.empty()) : Optional.empty();
        Optional<Coefficient> ac1 =
                isLopsided(common) ? coefficient(Ac1.of(common), Optional.empty()) : Optional.empty();
        return new Agreed(
                common.units().size(),
                common.unanimous(),
                alpha,
                ac1,
                OptionalDouble.empty(),
                trust(common, alpha, ac1));
    }

    /** Labels with an order: values are named from one end to the other. */
    static Agreed byGrade(Ratings<String> ratings, List<String> order) {
        Ratings<Integer> places = new Ratings<>(ratings.common().units().stream()
                .map(unit ->
                        unit.stream().map(label -> label.map(order::indexOf)).toList())
                .toList());
        OptionalDouble alpha = enough(places) ? Alpha.ordinal(places) : OptionalDouble.empty();
        return agreed(places, alpha, alpha.isPresent() ? Alpha.ordinalInterval(places) : Optional.empty(), true);
    }

    private static <T> Agreed agreed(
            Ratings<T> common, OptionalDouble alpha, Optional<Interval> likely, boolean withKappa) {
        int reps = common.units().size();
        Optional<Coefficient> headline = coefficient(alpha, likely);
        Optional<Coefficient> ac1 =
                isLopsided(common) ? coefficient(Ac1.of(common), Ac1.interval(common)) : Optional.empty();
        OptionalDouble kappa = withKappa && enough(common)
                ? Kappa.of(common).map(one -> OptionalDouble.of(one.value())).orElseGet(OptionalDouble::empty)
                : OptionalDouble.empty();
        return new Agreed(reps, common.unanimous(), headline, ac1, kappa, trust(common, headline, ac1));
    }

    private static <T> Trust trust(Ratings<T> common, Optional<Coefficient> alpha, Optional<Coefficient> ac1) {
        if (!enough(common)) {
            return Trust.TOO_FEW;
        }
        return ac1.or(() -> alpha).map(one -> Trust.of(one.value())).orElse(Trust.NO_VARIETY);
    }

    private static Optional<Coefficient> coefficient(OptionalDouble value, Optional<Interval> likely) {
        return value.isPresent() ? Optional.of(new Coefficient(value.getAsDouble(), likely)) : Optional.empty();
    }

    private static boolean isLopsided(Ratings<?> common) {
        return enough(common) && common.largestShare() > LOPSIDED;
    }

    private static boolean enough(Ratings<?> common) {
        return common.units().size() >= Trust.ENOUGH;
    }
}
