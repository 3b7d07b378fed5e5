package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Things of a text by the clause in which they begin. */
final class ByClause<T> {
    private final List<List<T>> lists;

    private ByClause(List<List<T>> lists) {
        this.lists = lists;
    }

    static <T> ByClause<T> of(List<Clause> clauses, List<T> things, ToIntFunction<T> first) {
        List<List<T>> lists = new ArrayList<>();
        int at = 0;
        for (Clause clause : clauses) {
            List<T> here = new ArrayList<>();
            while (at < things.size() && first.applyAsInt(things.get(at)) < clause.end()) {
                if (first.applyAsInt(things.get(at)) >= clause.first()) {
                    here.add(things.get(at));
                }
                at++;
            }
            lists.add(List.copyOf(here));
        }
        return new ByClause<>(lists);
    }

    List<T> of(int clause) {
        return lists.get(clause);
    }
}
