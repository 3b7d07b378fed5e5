package rushlight.situation;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.film.RepFacts;

/**
 * What a rep may be like. A situation never asks for a person or a game, so that the same one counts for everybody.
 * Facets go by the local name of their property; concepts by slug, words as themselves. Two situations that say the
 * same conditions in another order are equal.
 */
public sealed interface Situation {

    /** Some value of the facet is {@code value}, or narrower where it is a concept. */
    record Has(String facet, String value) implements Situation {
        @Override
        public boolean fits(RepFacts rep) {
            return rep.has(facet, value);
        }
    }

    /** Some value of the facet is one of {@code values}, or narrower: at least two, sorted. */
    record AnyOf(String facet, List<String> values) implements Situation {
        public AnyOf {
            values = values.stream().distinct().sorted().toList();
            if (values.size() < 2) {
                throw new IllegalArgumentException("One of several needs two values, but " + facet + " has " + values);
            }
        }

        @Override
        public boolean fits(RepFacts rep) {
            for (String value : values) {
                if (rep.has(facet, value)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** The facet has a number, and it is within the bounds; a missing bound does not bind. */
    record Between(String facet, OptionalInt least, OptionalInt most) implements Situation {
        public Between {
            if (least.isEmpty() && most.isEmpty()) {
                throw new IllegalArgumentException("A range of " + facet + " needs a bound.");
            }
            if (least.isPresent() && most.isPresent() && least.getAsInt() > most.getAsInt()) {
                throw new IllegalArgumentException("No " + facet + " is from " + least.getAsInt() + " to "
                        + most.getAsInt() + ": the first number is the smaller one.");
            }
        }

        @Override
        public boolean fits(RepFacts rep) {
            OptionalInt number = rep.number(facet);
            return number.isPresent()
                    && number.getAsInt() >= least.orElse(Integer.MIN_VALUE)
                    && number.getAsInt() <= most.orElse(Integer.MAX_VALUE);
        }
    }

    /** Every part holds: at least two, none of them an {@code And}. */
    record And(List<Situation> parts) implements Situation {
        public And {
            parts = Canonical.parts(parts);
        }

        @Override
        public boolean fits(RepFacts rep) {
            for (Situation part : parts) {
                if (!part.fits(rep)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Some part holds: at least two, none of them an {@code Or}. */
    record Or(List<Situation> parts) implements Situation {
        public Or {
            parts = Canonical.parts(parts);
        }

        @Override
        public boolean fits(RepFacts rep) {
            for (Situation part : parts) {
                if (part.fits(rep)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** The inner situation does not hold. That it was looked for is the caller's to ask: {@link #readsAbsent()}. */
    record Not(Situation inner) implements Situation {
        @Override
        public boolean fits(RepFacts rep) {
            return !inner.fits(rep);
        }
    }

    /** Whether a rep is like this. */
    boolean fits(RepFacts rep);

    /** Every facet that is read, with the values asked for; no values for a range of numbers. */
    default Map<String, Set<String>> reads() {
        return Reads.all(this);
    }

    /** The same for what stands under a negation: it must have been looked for before its absence means anything. */
    default Map<String, Set<String>> readsAbsent() {
        return Reads.absent(this);
    }

    /** Some value of the facet is this one or narrower. */
    static Situation has(String facet, String value) {
        return new Has(facet, value);
    }

    /** Some value of the facet is one of these or narrower. */
    static Situation anyOf(String facet, Collection<String> values) {
        List<String> distinct = values.stream().distinct().toList();
        return distinct.size() == 1 ? new Has(facet, distinct.get(0)) : new AnyOf(facet, distinct);
    }

    /** The number of the facet lies within the bounds, both included. */
    static Situation between(String facet, int least, int most) {
        return new Between(facet, OptionalInt.of(least), OptionalInt.of(most));
    }

    /** Every one of these holds. */
    static Situation all(Collection<Situation> parts) {
        List<Situation> flat = parts.stream()
                .flatMap(part -> part instanceof And and ? and.parts().stream() : Stream.of(part))
                .distinct()
                .toList();
        return flat.size() == 1 ? flat.get(0) : new And(flat);
    }

    /** Some one of these holds. */
    static Situation any(Collection<Situation> parts) {
        List<Situation> flat = parts.stream()
                .flatMap(part -> part instanceof Or or ? or.parts().stream() : Stream.of(part))
                .distinct()
                .toList();
        return flat.size() == 1 ? flat.get(0) : new Or(flat);
    }

    /** This does not hold. */
    static Situation not(Situation inner) {
        return new Not(inner);
    }
}
