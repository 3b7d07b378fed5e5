package rushlight.archive;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.store.Store;

/** Names of a new log that mean something else in the folder already. */
final class Clashes {
    private Clashes() {}

    static List<String> of(Collection<Log> logs, Store store) {
        Set<String> reasons = new TreeSet<>();
        for (Log log : logs) {
            Prospect prospect = log.prospect();
            store.prospect(prospect.id())
                    .filter(known -> !known.name().equals(prospect.name()))
                    .ifPresent(known -> reasons.add("The folder knows the prospect \"" + known.name()
                            + "\" under the name " + prospect.id() + ", but this log calls him \"" + prospect.name()
                            + "\". Write one name, or give him an id of his own in prospects.csv."));
            store.game(log.game().id())
                    .filter(known -> isAnother(known, log.game()))
                    .ifPresent(known -> reasons.add(clash(known, log.game())));
            store.evaluator(Identity.slug(log.evaluator()))
                    .filter(known -> !known.equals(log.evaluator()))
                    .ifPresent(known -> reasons.add("The folder knows the evaluator \"" + known + "\", and \""
                            + log.evaluator() + "\" would have the same address. Write one of the two."));
        }
        return List.copyOf(reasons);
    }

    private static boolean isAnother(Game known, Game said) {
        return !known.name().equals(said.name())
                || differ(known.opponent(), said.opponent())
                || differ(known.level(), said.level());
    }

    private static boolean differ(String known, String said) {
        return !known.isEmpty() && !said.isEmpty() && !known.equals(said);
    }

    private static String clash(Game known, Game said) {
        return "The folder has the game \"" + known.name() + "\" against \"" + known.opponent() + "\" (" + known.level()
                + "), but this log has \"" + said.name() + "\" against \"" + said.opponent() + "\" (" + said.level()
                + "). Give one of them another name or date.";
    }
}
