package rushlight.report.prospect;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The page as the press wants it: the same elements and words; a drawing says what it is in {@code alt}, and has its ink written
 * at each stroke, since the press knows no classes inside a drawing.
 */
final class PrintedPage {
    private static final int DRAWING_MM = 86;
    private static final String GREY = "#444444";
    private static final Map<String, Map<String, String>> INK = Map.ofEntries(
            Map.entry("figure-axis", Map.of("stroke", "#777777", "stroke-width", "1")),
            Map.entry("figure-rule", Map.of("stroke", "#777777", "stroke-width", "1")),
            Map.entry("figure-lead", Map.of("stroke", "#777777", "stroke-width", "1")),
            Map.entry("figure-line", Map.of("stroke", GREY, "stroke-width", "2", "stroke-dasharray", "4 3")),
            Map.entry("figure-mark", Map.of("stroke", GREY, "color", GREY)),
            Map.entry("figure-bar", Map.of("color", GREY)),
            Map.entry("figure-stream", Map.of("color", GREY)),
            Map.entry("figure-head", Map.of("font-weight", "bold")),
            Map.entry("figure-strong", Map.of("font-weight", "bold")));

    private static final Map<String, String> HALO =
            Map.of("stroke", "#ffffff", "fill", "#ffffff", "stroke-width", "4", "stroke-linejoin", "round");

    private PrintedPage() {}

    static Document of(String xhtml) {
        Document page = parse(xhtml);
        NodeList drawings = page.getElementsByTagNameNS("http://www.w3.org/2000/svg", "svg");
        for (int i = 0; i < drawings.getLength(); i++) {
            if (drawings.item(i) instanceof Element drawing) {
                drawing.setAttribute("alt", told(drawing, "title") + ". " + told(drawing, "desc"));
                drawing.setAttribute("color", "#000000");
                drawing.setAttribute("font-family", "DejaVu Sans Condensed");
                size(drawing);
                ink(drawing);
                halo(drawing);
            }
        }
        return page;
    }

    private static String told(Element drawing, String name) {
        NodeList found = drawing.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }

    /** The press wants to be told how tall a drawing is; without it, it takes all it can get. */
    private static void size(Element drawing) {
        String[] box = drawing.getAttribute("viewBox").split(" ", -1);
        boolean isStrip = drawing.getAttribute("class").contains("figure-strip");
        if (box.length == 4 && !isStrip) {
            double wide = Double.parseDouble(box[2]);
            double tall = Double.parseDouble(box[3]);
            drawing.setAttribute(
                    "style",
                    String.format(Locale.ROOT, "width: %dmm; height: %.2fmm", DRAWING_MM, DRAWING_MM * tall / wide));
        }
    }

    private static void ink(Element drawing) {
        NodeList all = drawing.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            if (all.item(i) instanceof Element element) {
                for (String one : element.getAttribute("class").split(" ", -1)) {
                    INK.getOrDefault(one, Map.of()).forEach(element::setAttribute);
                }
            }
        }
    }

    /** The press paints no stroke below a text: a copy of it in the paper's white is laid under each that may cross a band. */
    private static void halo(Element drawing) {
        NodeList all = drawing.getElementsByTagName("text");
        List<Element> texts = IntStream.range(0, all.getLength())
                .mapToObj(all::item)
                .filter(Element.class::isInstance)
                .map(Element.class::cast)
                .filter(text ->
                        List.of(text.getAttribute("class").split(" ", -1)).contains("figure-halo"))
                .toList();
        for (Element text : texts) {
            Element below = (Element) text.cloneNode(true);
            HALO.forEach(below::setAttribute);
            text.getParentNode().insertBefore(below, text);
        }
    }

    private static Document parse(String xhtml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("The report's page is not well formed.", e);
        } catch (IOException e) {
            throw new IllegalStateException("A text in memory could not be read.", e);
        }
    }
}
