package rushlight.archive;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.store.LogGraph;
import rushlight.store.Store;

/** What new logs say against each other, or against what the folder holds already. */
final class Clashes {
    private Clashes() {}

    /**
     * One sentence for each clash.
     *
     * @param listed prospects that are put with the logs: what they are called holds
     */
    static List<String> of(Collection<Log> logs, Collection<Prospect> listed, Store store) {
        Set<String> reasons = new TreeSet<>(among(logs));
        Set<String> told = listed.stream().map(Prospect::id).collect(Collectors.toSet());
        for (Log log : logs) {
            Prospect prospect = log.prospect();
            store.prospect(prospect.id())
                    .filter(known -> !told.contains(known.id()) && !known.name().equals(prospect.name()))
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

    /** Clashes of the logs of several files; within one file its reader has told them. */
    private static Set<String> among(Collection<Log> logs) {
        Set<String> reasons = new TreeSet<>();
        Map<String, String> names = new HashMap<>();
        Map<String, Game> games = new HashMap<>();
        Map<LogId, Map<String, String>> reps = new HashMap<>();
        for (Log log : logs) {
            LogId id = LogGraph.idOf(log);
            name(names, "prospect", id.prospect(), log.prospect().name(), reasons);
            name(names, "evaluator", id.evaluator(), log.evaluator(), reasons);
            Game game = games.computeIfAbsent(id.game(), g -> log.game());
            if (isAnother(game, log.game())) {
                reasons.add("One file has " + told(game) + ", another has " + told(log.game())
                        + ". Give one of them another name or date.");
            }
            Map<String, String> taken = reps.computeIfAbsent(id, i -> new HashMap<>());
            Set<String> twice = new TreeSet<>();
            log.readings().forEach(reading -> {
                String rep = reading.rep().rep();
                if (taken.putIfAbsent(Identity.slug(rep), rep) != null) {
                    twice.add(rep);
                }
            });
            if (!twice.isEmpty()) {
                reasons.add("More than one file has " + log.evaluator() + "'s reading of "
                        + log.prospect().name()
                        + ", " + log.game().name() + ", rep " + String.join(", ", twice)
                        + ". Keep each rep in one file.");
            }
        }
        return reasons;
    }

    private static void name(Map<String, String> names, String kind, String address, String name, Set<String> reasons) {
        String first = names.computeIfAbsent(kind + "/" + address, a -> name);
        if (!first.equals(name)) {
            reasons.add("The files write the " + kind + " \"" + first + "\" and \"" + name
                    + "\", which have one address, " + address + ". Write one of them everywhere.");
        }
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
        return "The folder has " + told(known) + ", but this log has " + told(said)
                + ". Give one of them another name or date.";
    }

    private static String told(Game game) {
        return "the game \"" + game.name() + "\""
                + (game.opponent().isEmpty() ? "" : " against \"" + game.opponent() + "\"")
                + (game.level().isEmpty() ? "" : " (" + game.level() + ")");
    }
}
