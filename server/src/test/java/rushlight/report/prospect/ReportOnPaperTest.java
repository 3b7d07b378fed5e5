package rushlight.report.prospect;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Book;
import rushlight.archive.ImportedLeague;
import rushlight.film.Opinion;
import rushlight.film.Projection;
import rushlight.film.Prospect;
import rushlight.findings.Spoken;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.Work;
import rushlight.report.book.HtmlChecker;
import rushlight.web.ReportMaterial;
import rushlight.web.ReportPlans;

/** Reports of the invented league, read back from the paper by another library. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReportOnPaperTest {
    /** The checker of HTML is here without its checker of style sheets. */
    private static final Pattern STYLE = Pattern.compile("<style>.*</style>", Pattern.DOTALL);

    @TempDir
    private static Path folder;

    @RegisterExtension
    private static final ImportedLeague LEAGUE = new ImportedLeague();

    private static ProspectReports reports;

    /** Every report of the league on letter paper, made once: the page and the PDF by the prospect's name. */
    private static final Map<String, Material> MATERIALS = new HashMap<>();

    private static final Map<String, String> PAGES = new LinkedHashMap<>();

    private static final Map<String, byte[]> PDFS = new LinkedHashMap<>();

    @BeforeAll
    static void prints_everybody() {
        Book book = LEAGUE.archive().book();
        reports = new ProspectReports(book.ontology(), book.taxonomy(), book.handbook());
        for (Prospect one : LEAGUE.archive().prospects()) {
            ProspectReports.Printed printed = reports.print(material(one.id()), Paper.LETTER);
            PAGES.put(one.name(), printed.html());
            PDFS.put(one.name(), printed.pdf());
        }
    }

    @Test
    void nobody_takes_more_than_two_pages_of_letter_paper() throws IOException {
        assertThat(PDFS).hasSize(18);
        for (Map.Entry<String, byte[]> one : PDFS.entrySet()) {
            try (PDDocument pdf = Loader.loadPDF(one.getValue())) {
                assertThat(pdf.getNumberOfPages()).as(one.getKey()).isBetween(1, 2);
                assertThat(pdf.getPage(0).getMediaBox().getHeight())
                        .as(one.getKey())
                        .isEqualTo(792);
            }
        }
    }

    @Test
    void the_paper_says_word_for_word_what_the_page_says_and_in_its_order() throws IOException {
        for (Map.Entry<String, byte[]> one : PDFS.entrySet()) {
            assertThat(onPaper(one.getValue(), one.getKey()))
                    .as(one.getKey())
                    .isEqualTo(onScreen(PAGES.getOrDefault(one.getKey(), "")));
        }
    }

    @Test
    void no_page_ends_with_a_heading() throws IOException {
        for (Map.Entry<String, byte[]> one : PDFS.entrySet()) {
            Set<String> headings = Set.copyOf(Jsoup.parse(PAGES.getOrDefault(one.getKey(), ""))
                    .select("h2, h3")
                    .eachText());
            try (PDDocument pdf = Loader.loadPDF(one.getValue())) {
                for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                    List<String> lines = text(pdf, page, one.getKey())
                            .lines()
                            .map(String::strip)
                            .filter(line -> !line.isEmpty())
                            .toList();
                    assertThat(headings).as(one.getKey()).doesNotContain(lines.get(lines.size() - 1));
                }
            }
        }
    }

    @Test
    void no_letter_stands_outside_the_margins() throws IOException {
        for (Map.Entry<String, byte[]> one : PDFS.entrySet()) {
            try (PDDocument pdf = Loader.loadPDF(one.getValue())) {
                Margins margins = new Margins();
                margins.getText(pdf);
                assertThat(margins.outside).as(one.getKey()).isEmpty();
            }
        }
    }

    @Test
    void every_font_is_in_the_file_and_every_page_is_tagged_in_a_language_under_a_title() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PDFS.get("Tavish Mordell"))) {
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Tavish Mordell: what the film shows");
            assertThat(new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("pdfuaid")
                    .contains("Tavish Mordell: what the film shows");
        }
    }

    @Test
    void a_screen_reader_is_told_the_headings_and_what_every_drawing_shows() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PDFS.get("Tavish Mordell"))) {
            List<PDStructureElement> all = new ArrayList<>();
            collect(pdf.getDocumentCatalog().getStructureTreeRoot(), all);
            assertThat(all).extracting(PDStructureElement::getStructureType).contains("H1", "H2", "H3", "P", "Figure");
            assertThat(all)
                    .filteredOn(one -> one.getStructureType().equals("Figure"))
                    .isNotEmpty()
                    .allSatisfy(one -> assertThat(one.getAlternateDescription())
                            .isNotBlank()
                            .endsWith("."));
        }
    }

    @Test
    void it_prints_in_grey() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PDFS.get("Tavish Mordell"))) {
            BufferedImage picture = new PDFRenderer(pdf).renderImageWithDPI(0, 50);
            long colored = IntStream.range(0, picture.getWidth() * picture.getHeight())
                    .map(i -> picture.getRGB(i % picture.getWidth(), i / picture.getWidth()))
                    .filter(rgb -> Math.abs((rgb >> 16 & 255) - (rgb & 255)) > 2
                            || Math.abs((rgb >> 8 & 255) - (rgb & 255)) > 2)
                    .count();
            long inked = IntStream.range(0, picture.getWidth() * picture.getHeight())
                    .filter(i -> (picture.getRGB(i % picture.getWidth(), i / picture.getWidth()) & 255) < 128)
                    .count();
            assertThat(colored).isZero();
            assertThat(inked).isGreaterThan(1_000);
        }
    }

    @Test
    void the_page_is_valid_html() throws Exception {
        List<Path> files = new ArrayList<>();
        for (String name : List.of("Tavish Mordell", "Jem Sorrelby")) {
            Path file = folder.resolve(name.replace(' ', '-') + ".html");
            Files.writeString(file, STYLE.matcher(PAGES.getOrDefault(name, "")).replaceAll(""));
            files.add(file);
        }
        assertThat(new HtmlChecker().complaints(files)).isEmpty();
    }

    @Test
    void what_does_not_fit_is_left_to_the_screen_the_lightest_first_and_that_is_said() throws IOException {
        Material material = material("tavish-mordell");
        String summary = "He is a power rusher who plays one move & wins <early>. ".repeat(27);
        List<Part> parts = Part.all().stream()
                .filter(part -> part != Part.PLAN && part != Part.ROLES)
                .toList();
        Written written = new Written(
                summary.substring(0, Written.LONGEST), "M. Ordway", Optional.of(LocalDate.of(2026, 1, 2)), parts);
        List<Opinion> said = IntStream.range(0, 60)
                .mapToObj(i -> new Opinion(
                        "said-" + i,
                        "tavish-mordell",
                        "A. Voice",
                        "He plays number " + i
                                + " with more weight than anybody, and he plays it every week of the year.",
                        OptionalDouble.empty(),
                        "talk.txt",
                        Opinion.Polarity.UNSURE,
                        "bull-rush",
                        List.of()))
                .toList();
        Material longer = new Material(
                material.assessment(),
                new Spoken(Map.of(), said),
                material.profile(),
                material.readers(),
                material.foreseen(),
                material.plan(),
                written);

        ProspectReports.Printed printed = reports.print(longer, Paper.A4);

        try (PDDocument paper = Loader.loadPDF(printed.pdf())) {
            assertThat(paper.getNumberOfPages()).isEqualTo(2);
            assertThat(Math.round(paper.getPage(0).getMediaBox().getHeight())).isEqualTo(842);
        }
        assertThat(onPaper(printed.pdf(), "Tavish Mordell"))
                .contains("one move & wins <early>.".replace(" ", ""))
                .contains("WrittenbyM.Ordway,2026-01-02.")
                .isEqualTo(onScreen(printed.html()));
        Elements entries = Jsoup.parse(printed.html()).select("#said .entry");
        assertThat(entries.get(0).text()).contains("number 0 ");
        assertThat(entries).hasSizeBetween(5, 59);
        assertThat(Jsoup.parse(printed.html()).select("#said .more").text())
                .isEqualTo(60 - entries.size() + " more on the screen.");
        assertThat(Jsoup.parse(printed.html()).select("#gaps .more")).isEmpty();
    }

    @Test
    void what_was_left_out_is_not_there_what_was_moved_is_first_and_the_cautions_stand() throws IOException {
        Material material = material("tavish-mordell");
        Written written = new Written("", "", Optional.empty(), List.of(Part.GAPS, Part.STRENGTHS));

        String page = reports.html(material.with(written), Paper.LETTER);

        assertThat(Jsoup.parse(page).select("h2").eachText())
                .containsExactly("What he lacks", "What he does well", "Limits of the tape");
        assertThat(Jsoup.parse(page).select("footer").text())
                .contains("certified coaches, licensed medical staff and the local rules decide")
                .contains("Not seen is not absent");
    }

    @Test
    void what_to_work_on_stands_by_skills_and_weeks_under_the_line_that_says_who_decides() {
        Element plan = section("Tavish Mordell", "plan");

        assertThat(plan.select("p").get(0).text()).startsWith("Certified coaches and licensed medical staff decide");
        assertThat(plan.select("table").get(0).select("thead th").eachText())
                .containsExactly("Skill, in teaching order", "For", "Week 1", "Week 2", "Week 3", "Week 4");
        PlanAnswer.Made made = (PlanAnswer.Made)
                material("tavish-mordell").plan().orElseThrow().answer();
        assertThat(plan.select("table").get(0).select("tbody th").eachText())
                .isNotEmpty()
                .containsExactlyElementsOf(made.plan().work().targets().stream()
                        .map(Work.Target::label)
                        .toList());
        assertThat(plan.select("table").get(0).select("tbody td").eachText().stream()
                        .filter(cell -> cell.matches("\\d+"))
                        .mapToInt(Integer::parseInt)
                        .sum())
                .as("minutes of all weeks, in the table and in the plan")
                .isPositive()
                .isEqualTo(made.plan().blocks().mapToInt(Plan.Block::minutes).sum());
        Elements retest = plan.select("table").get(1).select("tbody tr");
        assertThat(retest).hasSameSizeAs(made.plan().retest());
        assertThat(retest.select(":contains(no inside counter)").text()).contains("13 of 15", "at most");
    }

    @Test
    void a_gap_that_the_report_names_and_the_weeks_leave_out_is_told_in_a_line_with_the_reason() {
        Element plan = section("Tavish Mordell", "plan");
        String worked = plan.select("table").get(0).select("tbody").text();
        List<String> left = section("Tavish Mordell", "gaps").select("h3").eachText().stream()
                .map(title -> title.replaceFirst("^[^:]*: ", ""))
                .filter(gap -> !worked.contains(gap))
                .toList();

        assertThat(left).contains("power stalls, the feet stop");
        assertThat(plan.select(".more").text())
                .startsWith("Left out of these weeks: ")
                .contains(left);
        assertThat(plan.select(".more").text())
                .contains("power stalls, the feet stop: There is room for")
                .doesNotContain("likely range");
    }

    @Test
    void who_has_no_gap_that_stands_has_no_plan_and_that_is_said() {
        assertThat(section("Keverne Toll", "plan").text())
                .contains("There is no plan. No gap stands that these sessions could train.");
    }

    @Test
    void a_job_on_the_front_is_told_with_its_reps_and_never_as_what_he_cannot_do() {
        Element roles = section("Jem Sorrelby", "roles");

        assertThat(roles.select("h3").eachText())
                .isNotEmpty()
                .allSatisfy(title -> assertThat(title).matches("\\S (Shown|Not shown|Not enough tape): .+"));
        assertThat(roles.select(".film a")).isNotEmpty();
        assertThat(roles.text()).doesNotContain("cannot");
    }

    @Test
    void what_an_evaluator_foresees_stands_under_his_name_as_his_own_judgement() throws IOException {
        Projection said = new Projection(
                "tavish-mordell",
                "M. Ordway",
                "big-end",
                "run downs now",
                "",
                "",
                "the knee <left>",
                "",
                "my rounds",
                "third");
        Material material = material("tavish-mordell");
        Material foreseen = new Material(
                material.assessment(),
                material.spoken(),
                material.profile(),
                material.readers(),
                List.of(new Material.Foreseen(said, LocalDate.of(2026, 1, 2))),
                material.plan(),
                material.written());

        ProspectReports.Printed printed = reports.print(foreseen, Paper.LETTER);

        assertThat(Jsoup.parse(printed.html()).select("#projection").text())
                .contains("M. Ordway, 2026-01-02: his own judgement, no part of any count")
                .contains("Sees him as: big end. Readiness: run downs now. Risk: the knee <left>. My rounds: third.");
        assertThat(onPaper(printed.pdf(), "Tavish Mordell")).isEqualTo(onScreen(printed.html()));
        assertThat(Jsoup.parse(PAGES.getOrDefault("Tavish Mordell", "")).select("#projection"))
                .as("nobody foresaw anything in the league")
                .isEmpty();
    }

    @Test
    void no_band_of_a_drawing_crosses_a_label_on_paper() throws Exception {
        String page = PAGES.getOrDefault("Tavish Mordell", "");
        org.w3c.dom.NodeList texts = PrintedPage.of(page).getElementsByTagName("text");
        List<org.w3c.dom.Element> all = IntStream.range(0, texts.getLength())
                .mapToObj(i -> (org.w3c.dom.Element) texts.item(i))
                .filter(text -> text.getAttribute("class").contains("figure-halo"))
                .toList();

        assertThat(all)
                .hasSizeGreaterThan(20)
                .hasSize(2 * Jsoup.parse(page).select("svg .figure-halo").size());
        for (int i = 0; i < all.size(); i += 2) {
            assertThat(all.get(i).getAttribute("stroke")).isEqualTo("#ffffff");
            assertThat(all.get(i + 1).getAttribute("stroke")).isEqualTo("none");
            assertThat(all.get(i).getTextContent()).isEqualTo(all.get(i + 1).getTextContent());
        }
    }

    private static Element section(String name, String part) {
        Element section = Jsoup.parse(PAGES.getOrDefault(name, "")).getElementById(part);
        return Objects.requireNonNull(section, "no part " + part);
    }

    private static Material material(String id) {
        return MATERIALS.computeIfAbsent(
                id,
                one -> ReportMaterial.with(
                        ReportMaterial.of(LEAGUE.archive(), one).orElseThrow(),
                        ReportPlans.made(LEAGUE.archive().book())));
    }

    private static String onScreen(String page) {
        Element body = Jsoup.parse(page).body();
        body.select("svg").remove();
        return bare(body.wholeText());
    }

    private static String onPaper(byte[] pdf, String name) throws IOException {
        try (PDDocument paper = Loader.loadPDF(pdf)) {
            StringBuilder text = new StringBuilder();
            for (int page = 1; page <= paper.getNumberOfPages(); page++) {
                text.append(text(paper, page, name));
            }
            return name.replace(" ", "") + bare(text.toString());
        }
    }

    /** The words of a page without its foot, and without the name, which stands in both. */
    private static String text(PDDocument paper, int page, String name) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(paper).replaceAll(String.format("(?m)^.*Rushlight, page \\d of \\d$|^%s$", name), "");
    }

    private static String bare(String text) {
        return text.replaceAll("\\s+", "");
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> all) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                all.add(element);
                collect(element, all);
            }
        }
    }

    /** Notes what stands nearer to the edge of the paper than the page's margin lets it. */
    private static final class Margins extends PDFTextStripper {
        private final List<String> outside = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition text) {
            float right = text.getPageWidth() - 39;
            if (text.getXDirAdj() < 39 || text.getXDirAdj() + text.getWidthDirAdj() > right) {
                outside.add(text.getUnicode() + " at " + text.getXDirAdj());
            }
        }
    }
}
