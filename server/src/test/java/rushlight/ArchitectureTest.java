package rushlight;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;

/** The arrows of the house: which package may know which. */
@AnalyzeClasses(packages = "rushlight", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** What a package may use of the house, beside itself. */
    private static final Map<String, Set<String>> MAY_USE = mayUse();

    private static Map<String, Set<String>> mayUse() {
        Map<String, Set<String>> table = new HashMap<>();
        only(table, "knowledge");
        only(table, "evidence");
        only(table, "accounts");
        only(table, "figure", "knowledge");
        only(table, "words", "knowledge");
        only(table, "handbook", "words", "knowledge");
        only(table, "film", "words", "knowledge");
        only(table, "notes", "words", "film", "knowledge");
        only(table, "situation", "film", "knowledge");
        only(table, "store", "film", "knowledge");
        only(table, "agreement", "evidence", "film", "knowledge");
        only(table, "rules", "film", "knowledge");
        only(table, "index", "situation", "words", "film", "knowledge");
        only(table, "findings", "index", "rules", "evidence", "situation", "film", "knowledge");
        only(table, "plan", "findings", "situation", "evidence", "film", "knowledge");
        only(table, "ask", "findings", "index", "evidence", "situation", "words", "film", "knowledge");
        withAllOf(table, "report", "findings", "handbook", "figure", "plan");
        withAllOf(table, "archive", "ask", "notes", "findings", "store", "handbook", "plan", "agreement");
        withAllOf(table, "web", "archive", "report", "accounts");
        withAllOf(table, "cli", "web");
        return Map.copyOf(table);
    }

    private static void only(Map<String, Set<String>> table, String home, String... used) {
        table.put(home, Set.of(used));
    }

    /** For what stands on top of packages: these, and whatever they may use. */
    private static void withAllOf(Map<String, Set<String>> table, String home, String... used) {
        Set<String> all = new TreeSet<>(List.of(used));
        List.of(used).forEach(below -> all.addAll(table.get(below)));
        table.put(home, Set.copyOf(all));
    }

    @ArchTest
    static void arrows_point_down(JavaClasses classes) {
        Set<String> crossed = new TreeSet<>();
        for (JavaClass from : classes) {
            String home = home(from.getPackageName());
            from.getDirectDependenciesFromSelf().stream()
                    .map(d -> d.getTargetClass().getPackageName())
                    .filter(name -> name.startsWith("rushlight."))
                    .map(ArchitectureTest::home)
                    .filter(to -> !to.equals(home)
                            && !MAY_USE.getOrDefault(home, Set.of()).contains(to))
                    .forEach(to -> crossed.add(home + " may not use " + to + ", but " + from.getName() + " does"));
        }
        assertThat(crossed).isEmpty();
    }

    @ArchTest
    static void every_package_has_its_line_in_the_table(JavaClasses classes) {
        Set<String> packages = new TreeSet<>();
        classes.forEach(c -> packages.add(home(c.getPackageName())));
        assertThat(MAY_USE.keySet()).containsAll(packages);
    }

    @ArchTest
    static final ArchRule packages_are_free_of_cycles =
            slices().matching("rushlight.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule lucene_stays_in_index = only("rushlight.index..", "org.apache.lucene..");

    @ArchTest
    static final ArchRule the_database_stays_in_store = only("rushlight.store..", "org.apache.jena.tdb2..");

    @ArchTest
    static final ArchRule the_store_elsewhere_is_spoken_to_in_store =
            only("rushlight.store..", "org.apache.jena.rdfconnection..", "org.apache.jena.http..", "java.net.http..");

    @ArchTest
    static final ArchRule the_command_line_stays_in_cli = only("rushlight.cli..", "picocli..");

    @ArchTest
    static final ArchRule http_stays_in_web = only("rushlight.web..", "io.javalin..", "org.eclipse.jetty..");

    @ArchTest
    static final ArchRule meters_stay_in_web = only("rushlight.web..", "io.micrometer..");

    @ArchTest
    static final ArchRule passwords_stay_in_accounts = only("rushlight.accounts..", "at.favre.lib..");

    @ArchTest
    static final ArchRule allowances_stay_in_web = only("rushlight.web..", "io.github.bucket4j..");

    @ArchTest
    static final ArchRule templates_stay_in_report = only("rushlight.report..", "gg.jte..");

    @ArchTest
    static final ArchRule calendars_stay_in_report = only("rushlight.report..", "net.fortuna.ical4j..");

    @ArchTest
    static final ArchRule paper_stays_in_report =
            only("rushlight.report..", "com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.batik..");

    @ArchTest
    static final ArchRule the_solver_stays_in_plan = only("rushlight.plan..", "com.google.ortools..");

    @ArchTest
    static final ArchRule json_stays_in_web = noClasses()
            .that()
            .resideOutsideOfPackages("rushlight.web..", "rushlight.archive..", "rushlight.accounts..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule rule_engine_stays_with_the_rules = noClasses()
            .that()
            .resideOutsideOfPackages("rushlight.rules..", "rushlight.findings..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.jena.reasoner..");

    @ArchTest
    static final ArchRule statistics_stay_in_evidence = only("rushlight.evidence..", "org.apache.commons.statistics..");

    @ArchTest
    static final ArchRule no_dumping_grounds = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Impl")
            .orShould()
            .resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..", "..misc..");

    @ArchTest
    static final ArchRule no_state_is_shared_by_everyone = noFields()
            .that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .resideInAPackage("rushlight..")
            .should()
            .notBeFinal();

    @ArchTest
    static final ArchRule nothing_prints = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule exceptions_have_names = GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static void every_package_is_null_marked(JavaClasses classes) {
        assertThat(classes.getPackage("rushlight").getSubpackagesInTree())
                .isNotEmpty()
                .allMatch((JavaPackage p) -> p.isAnnotatedWith(NullMarked.class), "is @NullMarked");
    }

    @ArchTest
    static void the_rules_looked_at_something(JavaClasses classes) {
        assertThat(classes).hasSizeGreaterThan(60);
    }

    private static String home(String packageName) {
        String[] parts = packageName.split("\\.", -1);
        return parts.length > 1 ? parts[1] : "";
    }

    private static ArchRule only(String home, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }
}
