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
    AT_MOST,
    OR_MORE,
    OR_LESS,
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
    LATER,
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
