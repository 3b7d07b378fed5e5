package rushlight.archive;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.film.Identity;
import rushlight.film.LogId;
import rushlight.store.Store;

/**
 * Brings a data folder of an older layout up to this program's, one version after the other. The version stands in the
 * settings and is written last, so that a step that was cut off is made again: a step must bear being made twice.
 */
final class Layouts {
    /** From each older layout to the next. */
    static final Layouts KNOWN = new Layouts(Map.of(
            0,
            (settings, store) -> settings, // settings typed by hand, without a version
            1,
            Layouts::namedEvaluators));

    private static final Logger LOG = LoggerFactory.getLogger(Layouts.class);

    /** A way from one layout to the next; it gives the settings of the next. */
    interface Step {
        Settings make(Settings settings, Store store);
    }

    private final TreeMap<Integer, Step> steps;

    Layouts(Map<Integer, Step> steps) {
        this.steps = new TreeMap<>(steps);
    }

    /**
     * Makes every step that a folder lacks, and writes its settings where they are not as they should be.
     *
     * @throws FolderException where no step leads from its layout to this program's
     */
    void bring(Path folder, Settings found, Store store) {
        Settings now = found;
        for (int version = found.format(); version < Settings.FORMAT; version++) {
            Step step = steps.get(version);
            if (step == null) {
                throw new FolderException("The data folder " + folder + " has layout " + version
                        + ", and nothing leads from there to layout " + Settings.FORMAT
                        + ", which this Rushlight knows. Nothing was changed.");
            }
            now = step.make(now, store).withFormat(version + 1);
        }
        if (found.format() < Settings.FORMAT) {
            LOG.debug("Brought {} from layout {} to {}", folder, found.format(), Settings.FORMAT);
        }
        now.saveAfter(found, folder);
    }

    /** In layout 1 whoever typed reps in, or whose import was cut off, was in no list and was believed last, by name. */
    private static Settings namedEvaluators(Settings settings, Store store) {
        List<String> slugs = settings.evaluators().stream().map(Identity::slug).toList();
        return settings.withEvaluators(store.logs().stream()
                .map(LogId::evaluator)
                .distinct()
                .filter(evaluator -> !slugs.contains(evaluator))
                .sorted(Comparator.naturalOrder())
                .map(evaluator -> store.evaluator(evaluator).orElse(evaluator))
                .toList());
    }
}
