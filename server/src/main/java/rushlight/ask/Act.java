package rushlight.ask;

import java.util.Locale;

/** What words of a question do; the names are those of {@code lexicon/questions.tsv}. */
enum Act {
    WHO,
    FIND,
    PERHAPS,
    ELSE,
    KIND,
    RELATION,
    NOT,
    STOP,
    OR,
    AND,
    AT_LEAST,
    OR_MORE,
    UNIT,
    COUNT,
    TOP,
    ORDER,
    VERDICT,
    POLARITY,
    SEVERITY,
    IS,
    FACED,
    OPENING,
    BETTER,
    THAN,
    NOTE,
    SPOT,
    MEANS,
    GRAMMAR;

    static Act of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
