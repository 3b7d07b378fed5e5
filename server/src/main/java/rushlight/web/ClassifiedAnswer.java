package rushlight.web;

import java.util.List;
import java.util.Map;
import rushlight.rules.Explanation;

/**
 * What a row says, without keeping it.
 *
 * @param cells its good cells with every label resolved
 * @param classes what the rules conclude of them, and why
 */
public record ClassifiedAnswer(
        List<FaultAnswer> faults, List<FaultAnswer> warnings, Map<String, String> cells, List<Explanation> classes) {}
