package rushlight.findings;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Holds every role of the book against what was judged. */
final class RoleFits {
    private final FindingBook book;

    RoleFits(FindingBook book) {
        this.book = book;
    }

    /**
     * Every role, what fits best first.
     *
     * @param findings what was judged already
     * @param judging judges what is not among them
     */
    List<RoleFit> of(List<Judged> findings, Function<Finding, Judged> judging) {
        Map<String, Judged> judged = new TreeMap<>();
        findings.forEach(one -> judged.put(one.finding().slug(), one));
        Function<Role.Asked, RoleFit.Need> need = asked ->
                RoleFit.Need.of(asked, judged.computeIfAbsent(asked.slug(), slug -> judging.apply(book.asked(slug))));
        return book.roles().stream()
                .map(role -> RoleFit.of(
                        role,
                        role.required().stream().map(need).toList(),
                        role.preferred().stream().map(need).toList()))
                .sorted(RoleFit.bestFirst())
                .toList();
    }
}
