package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Which form of an answer is wanted, by the Accept header. */
final class Accepts {
    private record Range(String type, double quality) {
        private boolean takes(String media) {
            return type.equals("*/*")
                    || type.equals(media)
                    || (type.endsWith("/*") && media.startsWith(type.substring(0, type.length() - 1)));
        }
    }

    private Accepts() {}

    /** Ends the request where none of these forms is wanted. */
    static void check(Context ctx, List<String> offered) {
        best(ctx, offered);
    }

    /** Whether this form is asked for by its name, as a browser asks for a page. */
    static boolean names(Context ctx, String media) {
        return wanted(ctx.header("Accept")).stream()
                .anyMatch(range -> range.type().equals(media) && range.quality() > 0);
    }

    /**
     * The form that is wanted most.
     *
     * @param offered what there is, the one for those who do not mind first
     */
    static String best(Context ctx, List<String> offered) {
        String best = "";
        double quality = 0;
        List<Range> wanted = wanted(ctx.header("Accept"));
        for (String media : offered) {
            double its = wanted.stream()
                    .filter(range -> range.takes(media))
                    .min(Comparator.comparingInt(range -> specific(range.type())))
                    .map(Range::quality)
                    .orElse(0.0);
            if (its > quality) {
                best = media;
                quality = its;
            }
        }
        if (best.isEmpty()) {
            throw Problem.of(406, "There is this as " + String.join(", ", offered) + ".")
                    .thrown();
        }
        return best;
    }

    private static int specific(String type) {
        return type.equals("*/*") ? 2 : type.endsWith("/*") ? 1 : 0;
    }

    private static List<Range> wanted(@Nullable String header) {
        List<Range> ranges = new ArrayList<>();
        String text = header == null || header.isBlank() ? "*/*" : header;
        for (String part : text.split(",", -1)) {
            String[] pieces = part.strip().toLowerCase(Locale.ROOT).split(";", -1);
            double quality = 1;
            for (int i = 1; i < pieces.length; i++) {
                String piece = pieces[i].strip();
                if (piece.startsWith("q=")) {
                    quality = quality(piece.substring(2));
                }
            }
            ranges.add(new Range(pieces[0].strip(), quality));
        }
        return ranges;
    }

    private static double quality(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return 0;
        }
    }
}
