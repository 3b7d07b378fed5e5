package rushlight.knowledge;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The limits that one body laid down, or this house proposes, for one level of play.
 *
 * @param slug the profile
 * @param label whose limits they are
 * @param playingLevel for whom: {@code youth}, {@code high school}, {@code college} or {@code any}
 * @param standing {@code rule}, {@code recommendation} or {@code proposal}
 * @param edition the year, or {@code undated}
 * @param checkedOn when somebody last held it against the rules in force; absent where nobody has said so
 * @param contactMeans what it counts; numbers of profiles that count differently are not compared
 * @param note what else is said of it
 * @param limits its limits, in order of their slugs
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param sources where it comes from
 * @param local whether the user's own file added it
 */
public record LimitProfile(
        String slug,
        String label,
        String playingLevel,
        String standing,
        String edition,
        Optional<LocalDate> checkedOn,
        String contactMeans,
        String note,
        List<Limit> limits,
        String support,
        List<Source> sources,
        boolean local) {
    public LimitProfile {
        limits = List.copyOf(limits);
        sources = List.copyOf(sources);
    }

    /** The limits of one kind that hold in a part of the year; those of all year among them. */
    public List<Limit> limits(String kind, String seasonPart) {
        return limits.stream()
                .filter(limit -> limit.kind().equals(kind) && limit.holdsIn(seasonPart))
                .toList();
    }
}
