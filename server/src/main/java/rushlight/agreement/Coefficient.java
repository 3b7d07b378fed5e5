package rushlight.agreement;

import java.util.Optional;
import rushlight.evidence.Interval;

/**
 * Agreement beyond chance: 1 is full, 0 what chance would give.
 *
 * @param value from below 0 to 1
 * @param likely the range of 90 %; empty where too little varies to give one
 */
public record Coefficient(double value, Optional<Interval> likely) {}
