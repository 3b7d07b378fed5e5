package rushlight.notes;

import java.util.List;

/**
 * Where some words stand.
 *
 * @param words the words themselves
 * @param next the words behind them in the clause, the nearest one or two
 * @param previous the words before them in the clause, the nearest one or two
 * @param clause every word of the clause but them
 * @param round the words some way before and after them
 * @param subject who acts there: {@code blocker}, {@code other}, {@code prospect}, {@code pronoun}, or {@code nobody} named
 * @param alone whether the clause holds nothing else of weight
 * @param apart whether no word of weight stands beside them between two marks
 * @param begins whether they begin the clause
 * @param doing whether one of them is a verb in its "-ing" form: "is turning" is not "is turned"
 * @param phase what is told round about: {@code pass-rush}, {@code run} or {@code none}
 */
record Surroundings(
        List<String> words,
        List<String> next,
        List<String> previous,
        List<String> clause,
        List<String> round,
        String subject,
        boolean alone,
        boolean apart,
        boolean begins,
        boolean doing,
        String phase) {}
