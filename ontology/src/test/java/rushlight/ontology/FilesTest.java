package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FilesTest {
    private static final Pattern PREFIX = Pattern.compile("^@prefix (\\w*): <", Pattern.MULTILINE);
    private static final Pattern SUBJECT = Pattern.compile("^kb:(\\S+) a ", Pattern.MULTILINE);

    static List<Path> turtle() {
        return OntologyFiles.turtle();
    }

    static List<Path> branches() {
        return turtle().stream()
                .filter(file -> !OntologyFiles.isShapes(file))
                .filter(file -> !file.getFileName().toString().matches("(findings-|pairings|fit-rules|rep-classes).*"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("turtle")
    void every_file_parses_and_says_something(Path file) {
        assertThat(OntologyFiles.load(List.of(file)).size()).isPositive();
    }

    @ParameterizedTest
    @MethodSource("turtle")
    void every_file_opens_with_one_line_that_says_what_it_holds(Path file) {
        assertThat(OntologyFiles.text(file).lines().findFirst().orElse("")).matches("# [A-Z].{20,}\\.");
    }

    @ParameterizedTest
    @MethodSource("turtle")
    void prefixes_stand_in_order_and_each_is_used(Path file) {
        String text = OntologyFiles.text(file);
        List<String> prefixes =
                PREFIX.matcher(text).results().map(found -> found.group(1)).toList();
        assertThat(prefixes).isSorted();
        assertThat(prefixes).allSatisfy(prefix -> assertThat(text).containsPattern("[\\s(^/|!]" + prefix + ":[\\w-]"));
    }

    @ParameterizedTest
    @MethodSource("branches")
    void terms_stand_in_the_order_of_their_slugs(Path file) {
        assertThat(slugs(OntologyFiles.text(file))).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void a_file_out_of_order_is_noticed() {
        assertThat(slugs("kb:rip a skos:Concept .\nkb:arm-over a skos:Concept .\n"))
                .containsExactly("rip", "arm-over");
    }

    @Test
    void the_version_stands_once() {
        List<Path> versioned = turtle().stream()
                .filter(file -> OntologyFiles.text(file).contains("owl:versionInfo"))
                .toList();
        assertThat(versioned).extracting(file -> file.getFileName().toString()).containsExactly("rushlight.ttl");
        Matcher pom = Pattern.compile("<version>([^<]+?)(-SNAPSHOT)?</version>")
                .matcher(OntologyFiles.text(OntologyFiles.file("pom.xml")));
        assertThat(pom.find()).isTrue();
        assertThat(OntologyFiles.text(OntologyFiles.file("rushlight.ttl")))
                .contains("owl:versionInfo \"" + pom.group(1) + "\"");
    }

    private static List<String> slugs(String text) {
        return SUBJECT.matcher(text).results().map(found -> found.group(1)).toList();
    }
}
