package rushlight.store;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.vocabulary.RDFS;

/**
 * Everything that is stored of one prospect, in whatever graph: what stands at an address of his, what says that it is of him,
 * what points there, and games and files that nobody else needs. What is written out of him and what is erased is the same.
 */
final class PersonalData {
    /** Things whose address names no prospect. */
    private static final Set<String> OTHERS =
            Set.of("game", "person", "file", "revision", "notes", "question", "opinion");

    /** Things that go with the last that needs them. */
    private static final Set<String> SHARED = Set.of("game", "file");

    private static final String QUESTION = "question";
    private static final String ERASED = "[erased]";
    private static final String WORDS_APART = "[\\s_.\\-]*";

    private final String id;
    private final Pattern named;
    private final DatasetGraph data;
    private final Set<Node> things = new HashSet<>();

    /** @param id of a prospect that the data may know */
    PersonalData(DatasetGraph data, String id) {
        this.id = id;
        this.data = data;
        this.named = pattern(Stream.concat(
                Stream.of(id),
                data.stream(Node.ANY, Addresses.prospect(id), RDFS.label.asNode(), Node.ANY)
                        .map(quad -> quad.getObject().getLiteralLexicalForm())));
        data.stream().forEach(quad -> {
            boolean isOfHim = quad.getPredicate().equals(Terms.PROSPECT)
                    && quad.getObject().equals(Addresses.prospect(id));
            boolean asksOfHim = kind(quad.getSubject()).equals(QUESTION) && names(quad.getObject());
            if (isOfHim || asksOfHim || isHis(quad.getSubject())) {
                things.add(quad.getSubject());
            }
        });
        things.addAll(needless());
    }

    /** Everything of him. */
    List<Quad> quads() {
        return data.stream().filter(this::isHis).toList();
    }

    /** What is said of others and names him. */
    List<Quad> mentions() {
        return data.stream()
                .filter(quad -> !isHis(quad) && names(quad.getObject()))
                .toList();
    }

    /** The same without his name. */
    Quad withoutName(Quad mention) {
        Node said = mention.getObject();
        String text = named.matcher(said.getLiteralLexicalForm()).replaceAll(ERASED);
        Node left = said.getLiteralLanguage().isEmpty()
                ? NodeFactory.createLiteralDT(text, said.getLiteralDatatype())
                : NodeFactory.createLiteralLang(text, said.getLiteralLanguage());
        return Quad.create(mention.getGraph(), mention.getSubject(), mention.getPredicate(), left);
    }

    private Set<Node> needless() {
        Set<Node> his = new HashSet<>();
        Set<Node> needed = new HashSet<>();
        data.stream()
                .filter(quad -> SHARED.contains(kind(quad.getObject())))
                .forEach(quad -> (isHis(quad) ? his : needed).add(quad.getObject()));
        his.removeAll(needed);
        return his;
    }

    private boolean isHis(Quad quad) {
        return things.contains(quad.getSubject()) || things.contains(quad.getObject()) || isHis(quad.getObject());
    }

    private boolean isHis(Node node) {
        String[] parts = parts(node);
        if (parts.length < 2) {
            return false;
        }
        if (parts[0].equals("notes") || parts[0].equals(QUESTION)) {
            return named.matcher(parts[1]).find();
        }
        int place = parts[0].equals("log") ? 2 : 1;
        return !OTHERS.contains(parts[0]) && parts.length > place && parts[place].equals(id);
    }

    private boolean names(Node object) {
        return object.isLiteral()
                && named.matcher(object.getLiteralLexicalForm()).find();
    }

    private static String kind(Node node) {
        String[] parts = parts(node);
        return parts.length < 2 ? "" : parts[0];
    }

    private static String[] parts(Node node) {
        if (!node.isURI() || !node.getURI().startsWith(Addresses.DATA)) {
            return new String[0];
        }
        String[] parts = node.getURI().substring(Addresses.DATA.length()).split("/", -1);
        for (int i = 0; i < parts.length; i++) {
            parts[i] = URLDecoder.decode(parts[i], StandardCharsets.UTF_8);
        }
        return parts;
    }

    /** Finds a name as people and files write it: "Oren Halloway", "oren-halloway", "Oren_Halloway". */
    private static Pattern pattern(Stream<String> names) {
        String choices = names.map(name -> Stream.of(name.strip().split("[\\s_.\\-]+", -1))
                        .map(Pattern::quote)
                        .collect(Collectors.joining(WORDS_APART)))
                .distinct()
                .collect(Collectors.joining("|"));
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])(?:" + choices + ")(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
