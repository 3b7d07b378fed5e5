package rushlight.report.prospect;

import java.util.List;

/** What stands on every report, whoever printed it and whatever was left out. */
final class Cautions {
    static final List<String> ALWAYS = List.of(
            "Before anybody trains: certified coaches, licensed medical staff and the local rules decide about contact, heat"
                    + " and head impacts. Film shows what happened, not what is safe.",
            "Not seen is not absent: what the view hid, a duty nobody knows and a chance that never came count neither for"
                    + " nor against him.");

    private Cautions() {}
}
