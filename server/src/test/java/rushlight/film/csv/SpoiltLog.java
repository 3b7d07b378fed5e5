package rushlight.film.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;

/** A film log of ten thousand rows, two hundred of which are spoilt in twenty ways. */
public final class SpoiltLog {
    public static final int ROWS = 10_000;
    public static final int FAULTS = 200;
    private static final int APART = ROWS / FAULTS;

    /** A way to spoil a row: what is written where, and what should be told. */
    record Slip(String column, String value, Fault.Code code) {}

    static final List<Slip> SLIPS = List.of(
            new Slip("faults", "hi pads", Fault.Code.UNKNOWN_LABEL),
            new Slip("exchange", "run through", Fault.Code.AMBIGUOUS_LABEL),
            new Slip("results", "late hands", Fault.Code.OTHER_COLUMN),
            new Slip("phase", "rush", Fault.Code.UNKNOWN_WORD),
            new Slip("phase", "", Fault.Code.BLANK),
            new Slip("result", "won;lost", Fault.Code.SEVERAL_VALUES),
            new Slip("snap", "12th", Fault.Code.NOT_A_NUMBER),
            new Slip("date", "10/3/2025", Fault.Code.NOT_A_DATE),
            new Slip("date", "2025-10-04", Fault.Code.GAMES_COLLIDE),
            new Slip("clock", "14:75", Fault.Code.NOT_A_CLOCK),
            new Slip("end", "soon", Fault.Code.NOT_A_TIME),
            new Slip("end", "0:01", Fault.Code.ENDS_BEFORE_START),
            new Slip("exchange", "bull-rush >", Fault.Code.EXCHANGE_FORM),
            new Slip("exchange", "anchor-hop", Fault.Code.WRONG_MAN),
            new Slip("exchange", "bull-rush@up", Fault.Code.UNKNOWN_HAND),
            new Slip("assignment_source", "unknown", Fault.Code.DUTY_SOURCE),
            new Slip("prospect", "???", Fault.Code.NO_LETTER),
            new Slip("rep", "r0", Fault.Code.REPEATED_REP),
            new Slip("prospect", "OREN HALLOWAY", Fault.Code.NAMES_COLLIDE),
            new Slip("note", "bell\u0007", Fault.Code.CONTROL_CHARACTER));

    private final String text;
    private final SortedMap<Integer, Slip> spoilt;

    private SpoiltLog(String text, Map<Integer, Slip> spoilt) {
        this.text = text;
        this.spoilt = new TreeMap<>(spoilt);
    }

    /** The file. */
    public String text() {
        return text;
    }

    /** What is wrong, by line of the file. */
    SortedMap<Integer, Slip> spoilt() {
        return spoilt;
    }

    /** The same log for the same seed. */
    public static SpoiltLog seeded(long seed) {
        Map<Integer, Slip> spoilt = new TreeMap<>();
        Random random = new Random(seed);
        SmallLog log = SmallLog.row(plain(0));
        for (int row = 1; row < ROWS; row++) {
            int block = row / APART;
            boolean spoil = row % APART == 1 + new Random(seed + block).nextInt(APART - 1);
            Map<String, String> cells = new HashMap<>();
            if (spoil) {
                Slip slip = SLIPS.get(block % SLIPS.size());
                cells.put(slip.column(), slip.value());
                spoilt.put(row + 2, slip);
            }
            String[] all = plain(row);
            for (int i = 0; i < all.length; i += 2) {
                all[i + 1] = cells.getOrDefault(all[i], all[i + 1]);
            }
            log.and(random.nextBoolean() || spoil ? all : without(all, "exchange"));
        }
        return new SpoiltLog(log.text(), spoilt);
    }

    private static String[] plain(int row) {
        return new String[] {
            "rep",
            "r" + row,
            "prospect",
            "Oren Halloway",
            "phase",
            "pass-rush",
            "date",
            "2025-10-03",
            "snap",
            Integer.toString(row),
            "clock",
            "9:40",
            "start",
            "0:10",
            "end",
            "0:18",
            "assignment",
            "free-rush-assignment",
            "assignment_source",
            "stated",
            "exchange",
            "bull-rush > [anchor-hop]",
            "faults",
            "high pads",
            "results",
            "hurry",
            "result",
            "won",
            "note",
            "a \"quoted\" note, row " + row
        };
    }

    private static String[] without(String[] cells, String column) {
        String[] less = cells.clone();
        for (int i = 0; i < less.length; i += 2) {
            if (less[i].equals(column)) {
                less[i + 1] = "";
            }
        }
        return less;
    }
}
