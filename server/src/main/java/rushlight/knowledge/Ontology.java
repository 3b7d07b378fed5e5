package rushlight.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.graph.compose.Union;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.RiotException;
import org.apache.jena.riot.system.ErrorHandlerFactory;
import org.apache.jena.riot.system.StreamRDF;
import org.apache.jena.riot.system.StreamRDFBase;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.sys.JenaSystem;
import org.apache.jena.vocabulary.OWL2;
import org.apache.jena.vocabulary.RDF;

/** The book as it was shipped, with a user's own terms on top where there are some. */
public final class Ontology {
    private static final String FOLDER = "/rushlight/ontology/";

    private final Graph shipped;
    private final LinedTurtle overlay;
    private final Graph all;
    private final String fingerprint;

    private Ontology(Graph shipped, LinedTurtle overlay, Graph all, String fingerprint) {
        this.shipped = shipped;
        this.overlay = overlay;
        this.all = all;
        this.fingerprint = fingerprint;
    }

    /** The shipped files alone. */
    public static Ontology packaged() {
        return read(Optional.empty());
    }

    /**
     * The shipped files and an overlay; settable values of the overlay replace the shipped ones.
     *
     * @throws BrokenBookException where the overlay is not Turtle, naming line and column
     */
    public static Ontology withOverlay(Path file) {
        return read(Optional.of(file));
    }

    private static Ontology read(Optional<Path> overlayFile) {
        MessageDigest digest = sha256();
        List<String> names = files().stream().filter(name -> !isLesson(name)).toList();
        names.forEach(name -> digest.update(resource(name)));
        Graph shipped = ShippedTerms.SAID;
        LinedTurtle overlay = overlayFile
                .map(file -> {
                    byte[] bytes = bytes(file);
                    digest.update(bytes);
                    return LinedTurtle.read(file.getFileName().toString(), bytes);
                })
                .orElseGet(LinedTurtle::empty);
        Graph all = Overlay.merge(shipped, overlay.graph());
        return new Ontology(shipped, overlay, all, HexFormat.of().formatHex(digest.digest()));
    }

    /** Everything, overlay included. Read only: nobody but the reader of the files adds to it. */
    public Graph graph() {
        return all;
    }

    /** The shipped files alone, to show a house value beside a user's own. */
    public Graph shipped() {
        return shipped;
    }

    /** The user's own statements; empty where there are none. */
    public Graph overlay() {
        return overlay.graph();
    }

    /** Whether a term, a pairing, a rule or a statement of a lesson is the user's own, and not a shipped one. */
    public boolean isLocal(Node subject) {
        return overlay.graph().contains(subject, RDF.type.asNode(), Node.ANY)
                && !shipped.contains(subject, Node.ANY, Node.ANY);
    }

    /** The line of the user's file on which a statement stands. */
    public OptionalLong line(Triple statement) {
        return overlay.line(statement);
    }

    /** The first line of the user's file that speaks of a subject. */
    public OptionalLong line(Node subject) {
        return overlay.line(subject);
    }

    /** SHA-256 of the files and the overlay: another fingerprint means classify and index again. */
    public String fingerprint() {
        return fingerprint;
    }

    /**
     * What a coach tells about the terms, with what the user's own file tells: one statement a subject. The shipped part is
     * read when asked for, since no rule and no count looks at it, and is not part of the fingerprint.
     */
    public Graph lessons() {
        Graph own = overlay.graph();
        Graph told = GraphFactory.createDefaultGraph();
        own.find(Node.ANY, RDF.type.asNode(), Rl.term("Teaching"))
                .mapWith(Triple::getSubject)
                .forEachRemaining(one -> own.find(one, Node.ANY, Node.ANY).forEachRemaining(told::add));
        return told.isEmpty() ? shippedLessons() : new Union(shippedLessons(), told);
    }

    /** What the shipped files tell about the terms. */
    public Graph shippedLessons() {
        return ShippedLessons.TOLD;
    }

    private static Graph turtle(Predicate<String> wanted) {
        JenaSystem.init();
        List<ReadFile> read =
                files().stream().filter(name -> name.endsWith(".ttl")).filter(wanted).toList().parallelStream()
                        .map(name -> parse(name, resource(name)))
                        .toList();
        Graph graph = GraphFactory.createDefaultGraph();
        for (ReadFile file : read) {
            file.statements().forEach(graph::add);
            graph.getPrefixMapping().setNsPrefixes(file.prefixes());
        }
        return graph;
    }

    /** The shipped terms, read when first asked for and once: they do not change while the program runs. */
    private static final class ShippedTerms {
        static final Graph SAID = turtle(name -> !isLesson(name));
    }

    /** The shipped lessons, in the same way: only some who open the book want them. */
    private static final class ShippedLessons {
        static final Graph TOLD = turtle(Ontology::isLesson);
    }

    private static boolean isLesson(String name) {
        return name.startsWith("teaching-") && name.endsWith(".ttl");
    }

    /** The version of the book, which stands in one place: its header. */
    public String version() {
        return new Facts(shipped)
                .texts(NodeFactory.createURI("https://rushlight.example/"), OWL2.versionInfo.asNode()).stream()
                        .findFirst()
                        .orElseThrow(() -> new BrokenBookException("rushlight.ttl says no owl:versionInfo."));
    }

    /** The text of one shipped file, such as {@code rules/rep-1-tags.rules}. */
    public static String text(String name) {
        return new String(resource(name), StandardCharsets.UTF_8);
    }

    /** Names of the shipped files, relative to the folder of the book, in order. */
    public static List<String> files() {
        return PackedFiles.under(FOLDER);
    }

    private static byte[] resource(String name) {
        try (InputStream in = Ontology.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new BrokenBookException("The book lacks its file " + name + ".");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** What stands in one file, and what it calls its addresses for short. */
    private record ReadFile(List<Triple> statements, Map<String, String> prefixes) {}

    /**
     * The statements of one shipped file. Its addresses are whole, and its tests hold them to the standard: no reader asks
     * again.
     */
    private static ReadFile parse(String name, byte[] bytes) {
        ReadFile file = new ReadFile(new ArrayList<>(), new LinkedHashMap<>());
        StreamRDF into = new StreamRDFBase() {
            @Override
            public void triple(Triple statement) {
                file.statements().add(statement);
            }

            @Override
            public void prefix(String prefix, String address) {
                file.prefixes().put(prefix, address);
            }
        };
        try {
            RDFParser.fromString(new String(bytes, StandardCharsets.UTF_8), Lang.TURTLE)
                    .errorHandler(ErrorHandlerFactory.errorHandlerStrictNoLogging)
                    .resolveURIs(false)
                    .checking(false)
                    .parse(into);
            return file;
        } catch (RiotException e) {
            throw new BrokenBookException(name + " cannot be read as Turtle: " + e.getMessage());
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
