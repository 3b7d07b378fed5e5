package rushlight.notes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Which places of two rows belong together: the longest row that stands in both, found from both ends and then as Myers (1986) does. */
final class LongestRow {
    /** Rows that differ in more places have nothing in common between their ends. */
    private static final int FARTHEST = 2_000;

    private LongestRow() {}

    /** A place in each row. */
    record Pair(int one, int other) {}

    static List<Pair> of(List<String> a, List<String> b) {
        int shorter = Math.min(a.size(), b.size());
        int head = 0;
        while (head < shorter && a.get(head).equals(b.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < shorter - head && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
            tail++;
        }
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < head; i++) {
            pairs.add(new Pair(i, i));
        }
        for (Pair pair : between(a.subList(head, a.size() - tail), b.subList(head, b.size() - tail))) {
            pairs.add(new Pair(pair.one + head, pair.other + head));
        }
        for (int i = tail; i > 0; i--) {
            pairs.add(new Pair(a.size() - i, b.size() - i));
        }
        return pairs;
    }

    private static List<Pair> between(List<String> a, List<String> b) {
        int most = Math.min(a.size() + b.size(), FARTHEST);
        int[] far = new int[2 * most + 3];
        List<int[]> past = new ArrayList<>();
        for (int d = 0; d <= most; d++) {
            past.add(java.util.Arrays.copyOfRange(far, most - d, most + d + 3));
            for (int k = -d; k <= d; k += 2) {
                int at = most + 1 + k;
                int x = isDown(k, d, far[at - 1], far[at + 1]) ? far[at + 1] : far[at - 1] + 1;
                while (x < a.size() && x - k < b.size() && a.get(x).equals(b.get(x - k))) {
                    x++;
                }
                far[at] = x;
                if (x >= a.size() && x - k >= b.size()) {
                    return wayBack(a.size(), b.size(), past);
                }
            }
        }
        return List.of();
    }

    private static boolean isDown(int k, int d, int left, int right) {
        return k == -d || (k != d && left < right);
    }

    /** The pairs on the way that was found, from its end. {@code past[d]} holds the farthest places before step d, of the diagonals -d-1 to d+1. */
    private static List<Pair> wayBack(int m, int n, List<int[]> past) {
        List<Pair> pairs = new ArrayList<>();
        int x = m;
        int y = n;
        for (int d = past.size() - 1; d >= 0; d--) {
            int[] far = past.get(d);
            int k = x - y;
            int at = k + d + 1;
            boolean down = isDown(k, d, far[at - 1], far[at + 1]);
            int from = d == 0 ? 0 : down ? far[at + 1] : far[at - 1];
            int start = d == 0 || down ? from : from + 1;
            while (x > start) {
                x--;
                y--;
                pairs.add(new Pair(x, y));
            }
            x = from;
            y = d == 0 ? 0 : from - (down ? k + 1 : k - 1);
        }
        Collections.reverse(pairs);
        return pairs;
    }
}
