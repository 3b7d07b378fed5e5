package rushlight.rules;

import java.io.BufferedReader;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.jena.reasoner.rulesys.Rule;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Ontology;

/** The two files of rep rules, read once, with the sentence that stands before each rule. */
final class RuleBook {
    private static final String TAGS = "rules/rep-1-tags.rules";
    private static final String ABSENCE = "rules/rep-2-absence.rules";
    private static final Pattern HEAD = Pattern.compile("\\[([A-Za-z0-9-]+):");
    private static final Pattern SENTENCE = Pattern.compile("^# \"(.+)\"\\s*$");

    private final List<Rule> tags;
    private final List<Rule> absence;
    private final Map<String, String> sentences;

    private RuleBook(List<Rule> tags, List<Rule> absence, Map<String, String> sentences) {
        this.tags = List.copyOf(tags);
        this.absence = List.copyOf(absence);
        this.sentences = Map.copyOf(sentences);
    }

    /** The rules as shipped. */
    static RuleBook packaged() {
        return of(Ontology.text(TAGS), Ontology.text(ABSENCE));
    }

    /**
     * Reads two strata.
     *
     * @throws BrokenBookException where a rule has no sentence, two have one name, or the parser lost one in silence
     */
    static RuleBook of(String tagRules, String absenceRules) {
        Map<String, String> sentences = new HashMap<>();
        List<Rule> tags = read(TAGS, tagRules, sentences);
        List<Rule> absence = read(ABSENCE, absenceRules, sentences);
        return new RuleBook(tags, absence, sentences);
    }

    /** Rules without negation. */
    List<Rule> tags() {
        return tags;
    }

    /** Rules that may say "and not", to be run over everything the first ones concluded. */
    List<Rule> absence() {
        return absence;
    }

    /** What a person reads for a rule. */
    String sentence(String rule) {
        String sentence = sentences.get(rule);
        if (sentence == null) {
            throw new IllegalArgumentException("There is no rule " + rule + ".");
        }
        return sentence;
    }

    private static List<Rule> read(String file, String text, Map<String, String> sentences) {
        int heads = 0;
        String sentence = "";
        for (String line : text.lines().toList()) {
            Matcher said = SENTENCE.matcher(line);
            if (said.matches()) {
                sentence = said.group(1);
            } else if (!line.startsWith("#")) {
                for (Matcher head = HEAD.matcher(line); head.find(); heads++) {
                    keep(file, head.group(1), sentence, sentences);
                    sentence = "";
                }
            }
        }
        List<Rule> rules = Rule.parseRules(Rule.rulesParserFromReader(new BufferedReader(new StringReader(text))));
        if (rules.size() != heads) {
            throw new BrokenBookException(file + " has " + heads + " rules, but " + rules.size()
                    + " could be read. Each @prefix must stand alone on its line, each rule start its own.");
        }
        return rules;
    }

    private static void keep(String file, String name, String sentence, Map<String, String> sentences) {
        if (sentence.isEmpty()) {
            throw new BrokenBookException(
                    file + ": the rule " + name + " lacks the sentence before it, a line like # \"He was chipped.\"");
        }
        if (sentences.put(name, sentence) != null) {
            throw new BrokenBookException(file + ": two rules are called " + name + ".");
        }
    }
}
