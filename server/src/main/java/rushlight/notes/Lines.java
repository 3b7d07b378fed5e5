package rushlight.notes;

import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;

/** The lines of a file, however they end, each made of its bytes when it is asked for, so that long files cost no more than they hold. */
final class Lines extends AbstractList<String> implements RandomAccess {
    private static final int REMEMBERED = 16;

    private final byte[] bytes;
    private final int[] starts;
    private final int count;
    private final String[] latest = new String[REMEMBERED];
    private final int[] latestAt = new int[REMEMBERED];

    private Lines(byte[] bytes, int[] starts, int count) {
        this.bytes = bytes;
        this.starts = starts;
        this.count = count;
        Arrays.fill(latestAt, -1);
    }

    /**
     * The lines of a text.
     *
     * @param bytes in UTF-8
     * @param from where the text begins in them
     */
    static Lines of(byte[] bytes, int from) {
        int[] starts = new int[64];
        int count = 0;
        starts[count++] = from;
        for (int i = from; i < bytes.length; i++) {
            boolean ends = bytes[i] == '\n' || (bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n'));
            if (ends) {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, count * 2);
                }
                starts[count++] = i + 1;
            }
        }
        return new Lines(bytes, starts, count);
    }

    @Override
    public String get(int index) {
        if (index < 0 || index >= count) {
            throw new IndexOutOfBoundsException(index);
        }
        int slot = index % REMEMBERED;
        if (latestAt[slot] != index) {
            latest[slot] = line(index);
            latestAt[slot] = index;
        }
        return latest[slot];
    }

    private String line(int index) {
        int from = starts[index];
        int to = index + 1 < count ? starts[index + 1] - 1 : bytes.length;
        if (index + 1 < count && to > from && bytes[to] == '\n' && bytes[to - 1] == '\r') {
            to--;
        }
        return new String(bytes, from, to - from, StandardCharsets.UTF_8);
    }

    @Override
    public int size() {
        return count;
    }
}
