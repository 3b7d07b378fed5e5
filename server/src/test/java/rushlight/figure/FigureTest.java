package rushlight.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FigureTest {
    private static final Heading HEADING = new Heading("a-1", "What <goes> with \"it\"", "Tom & Jerry's > list");

    static Stream<Drawing> drawings() {
        return Samples.all().stream();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void a_drawing_is_well_formed_and_names_and_describes_itself(Drawing drawing) {
        Element svg = parsed(drawing);
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getAttribute("viewBox")).matches("0 0 [0-9.]+ [0-9.]+");
        Element title = first(svg, "title");
        Element desc = first(svg, "desc");
        assertThat(title.getTextContent()).isNotBlank();
        assertThat(desc.getTextContent()).isNotBlank();
        assertThat(svg.getAttribute("aria-labelledby")).isEqualTo(title.getAttribute("id"));
        assertThat(svg.getAttribute("aria-describedby")).isEqualTo(desc.getAttribute("id"));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void a_drawing_styles_nothing_inline_runs_nothing_and_asks_for_nothing(Drawing drawing) {
        assertThat(drawing.svg())
                .doesNotContain(" style=", "<style", "<script", "href", "url(", "<image", "<foreignObject");
        NodeList all = parsed(drawing).getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            for (int a = 0; a < all.item(i).getAttributes().getLength(); a++) {
                assertThat(all.item(i).getAttributes().item(a).getNodeName()).doesNotStartWith("on");
            }
            for (String name : new String[] {"fill", "stroke"}) {
                assertThat(((Element) all.item(i)).getAttribute(name)).isIn("", "none", "currentColor");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void nothing_is_drawn_outside_the_frame(Drawing drawing) {
        Element svg = parsed(drawing);
        String[] box = svg.getAttribute("viewBox").split(" ", -1);
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            for (String name : new String[] {"x", "x1", "x2", "cx"}) {
                within(element, name, width);
            }
            for (String name : new String[] {"y", "y1", "y2", "cy"}) {
                within(element, name, height);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void the_table_behind_it_has_a_value_in_every_cell_of_every_row(Drawing drawing) {
        Table table = drawing.table();
        assertThat(table.rows()).isNotEmpty().allSatisfy(row -> assertThat(row).hasSameSizeAs(table.columns()));
    }

    @Test
    void the_same_values_give_the_same_bytes() {
        assertThat(Samples.all()).isEqualTo(Samples.all());
    }

    @Test
    void markup_in_a_label_stays_text() {
        Ladder ladder = new Ladder(
                HEADING, "<script>alert(1)</script>", List.of(new Ladder.Rung("a \u0000<b>\"&'", Ladder.Need.MUST)));
        Drawing drawing = ladder.draw();
        assertThat(drawing.svg()).doesNotContain("<script", "<b>", "\u0000");
        assertThat(parsed(drawing).getTextContent()).contains("<script>alert(1)</script>", "a <b>\"&'");
        assertThat(first(parsed(drawing), "title").getTextContent()).isEqualTo("What <goes> with \"it\"");
        assertThatThrownBy(() -> new Heading("a\"b", "t", "d")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_front_marks_one_spot_and_puts_the_square_in_the_middle() {
        Element svg = parsed(Samples.front());
        Element square = only(svg, "rect", "figure-man");
        double middle =
                Double.parseDouble(square.getAttribute("x")) + Double.parseDouble(square.getAttribute("width")) / 2;
        Element mark = only(svg, "polygon", "figure-mark");
        double at = Double.parseDouble(mark.getAttribute("points").split("[ ,]", -1)[4]);
        List<Double> circles = all(svg, "circle", "figure-man").stream()
                .map(c -> Double.parseDouble(c.getAttribute("cx")))
                .sorted()
                .toList();
        assertThat(circles).hasSize(5);
        assertThat(circles).anyMatch(x -> x < middle);
        double guard = circles.stream().filter(x -> x > middle).findFirst().orElseThrow();
        double tackle = circles.stream().filter(x -> x > guard).findFirst().orElseThrow();
        assertThat(at)
                .as("outside the tackle, by a quarter of the way to the next man")
                .isGreaterThan(tackle);
        assertThat((at - tackle) / (tackle - guard)).isEqualTo(0.25, offset(0.01));
        assertThat(all(svg, "circle", "figure-open")).hasSize(1);
    }

    @Test
    void bars_of_the_front_are_as_tall_as_their_counts() {
        List<Element> bars = all(parsed(Samples.counts()), "rect", "figure-bar");
        assertThat(bars).hasSize(7);
        double tallest =
                bars.stream().mapToDouble(b -> number(b, "height")).max().orElseThrow();
        assertThat(bars)
                .anySatisfy(b -> assertThat(number(b, "height") / tallest).isEqualTo(12.0 / 118, offset(0.02)));
        assertThat(Samples.counts().table().rows()).contains(List.of("9", "outside the end", "118"));
    }

    @Test
    void labels_of_neighboring_spots_do_not_run_into_each_other() {
        List<Element> labels = all(parsed(Samples.counts()), "text", "figure-label");
        for (Element a : labels) {
            for (Element b : labels) {
                if (a != b && a.getAttribute("y").equals(b.getAttribute("y"))) {
                    double apart = Math.abs(number(a, "x") - number(b, "x"));
                    int letters =
                            a.getTextContent().length() + b.getTextContent().length();
                    assertThat(apart).isGreaterThan(letters * 13 * 0.27);
                }
            }
        }
    }

    @Test
    void the_first_rung_of_the_ladder_is_at_the_foot() {
        List<Element> labels = all(parsed(Samples.ladder()), "text", "figure-label");
        assertThat(labels.get(labels.size() - 1).getTextContent()).isEqualTo("stance balance");
        assertThat(Samples.ladder().table().rows().get(0)).containsExactly("1", "stance balance", "needed");
        assertThat(Samples.ladder().table().rows().get(5)).contains("the goal");
    }

    @Test
    void every_stream_of_the_flow_is_as_wide_as_its_count() {
        List<Element> streams = all(parsed(Samples.flow()), "path", "figure-stream");
        double total =
                streams.stream().mapToDouble(s -> number(s, "stroke-width")).sum();
        assertThat(total).as("three crossings of 190 steps each").isEqualTo(570, offset(4.0));
        assertThatThrownBy(() -> new Flow(HEADING, List.of("a", "b"), List.of(new Flow.Stream(List.of("x"), 1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_interval_stands_where_its_numbers_say() {
        Element svg = parsed(Samples.interval());
        Element range = only(svg, "rect", "figure-range");
        assertThat(number(range, "x")).isEqualTo(16 + 328 * 0.73, offset(0.01));
        assertThat(number(range, "width")).isEqualTo(328 * 0.24, offset(0.01));
        assertThat(svg.getTextContent()).contains("16 of 18", "line 33 %");
        assertThatThrownBy(() -> new Interval(HEADING, 3, 2, 0, 1, OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void any_count_of_any_spot_can_be_drawn() {
        Random random = new Random(20261125);
        for (int i = 0; i < 200; i++) {
            List<Front.Spot> spots = IntStream.range(0, random.nextInt(9))
                    .mapToObj(n -> new Front.Spot(
                            "s" + n, "w", random.nextInt(35) - 17, OptionalInt.of(random.nextInt(2000)), true))
                    .toList();
            parsed(new Front(HEADING, Samples.LINE, spots).draw());
        }
    }

    private static void within(Element element, String name, double limit) {
        if (!element.getAttribute(name).isEmpty()) {
            assertThat(number(element, name))
                    .as(element.getTagName() + " " + name)
                    .isBetween(-0.01, limit + 0.01);
        }
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private static Element only(Element svg, String name, String kind) {
        List<Element> found = all(svg, name, kind);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Element> all(Element svg, String name, String kind) {
        NodeList found = svg.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .filter(e -> List.of(e.getAttribute("class").split(" ", -1)).contains(kind))
                .toList();
    }

    private static Element first(Element svg, String name) {
        return (Element) svg.getElementsByTagName(name).item(0);
    }

    private static Element parsed(Drawing drawing) {
        try {
            Document document = DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(drawing.svg())));
            return document.getDocumentElement();
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError(drawing.svg(), e);
        }
    }
}
