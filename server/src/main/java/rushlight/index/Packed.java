package rushlight.index;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.lucene.store.ByteArrayDataInput;
import org.apache.lucene.store.ByteBuffersDataOutput;
import org.apache.lucene.store.DataInput;
import org.apache.lucene.store.DataOutput;
import org.apache.lucene.util.BytesRef;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.situation.Sighting;

/** Values as bytes, for stored fields and doc values. What is written is read back equal. */
final class Packed {
    private Packed() {}

    /** Something that writes itself. */
    private interface Writing {
        void to(DataOutput out) throws IOException;
    }

    private static BytesRef bytes(Writing writing) throws IOException {
        ByteBuffersDataOutput out = new ByteBuffersDataOutput();
        writing.to(out);
        return new BytesRef(out.toArrayCopy());
    }

    private static DataInput input(BytesRef bytes) {
        return new ByteArrayDataInput(bytes.bytes, bytes.offset, bytes.length);
    }

    static BytesRef rep(Reading reading, RepFacts facts) throws IOException {
        return bytes(out -> {
            out.writeString(reading.rep().prospect());
            out.writeString(reading.rep().game());
            out.writeString(reading.rep().rep());
            out.writeString(reading.evaluator());
            writeLists(out, reading.tags());
            out.writeVInt(reading.exchange().size());
            for (Step step : reading.exchange()) {
                out.writeByte((byte) (step.by() == Step.By.HIM ? 1 : 0));
                out.writeString(step.concept());
                writeOptional(out, step.hand());
            }
            out.writeString(facts.evaluator());
            writeLists(out, facts.tagged());
            writeLists(out, facts.closed());
            out.writeVInt(facts.numbers().size());
            for (Map.Entry<String, Integer> number : facts.numbers().entrySet()) {
                out.writeString(number.getKey());
                out.writeZInt(number.getValue());
            }
        });
    }

    static IndexedRep rep(BytesRef bytes) throws IOException {
        DataInput in = input(bytes);
        RepId id = new RepId(in.readString(), in.readString(), in.readString());
        String evaluator = in.readString();
        Map<String, List<String>> tags = readLists(in);
        List<Step> exchange = new ArrayList<>();
        for (int left = in.readVInt(); left > 0; left--) {
            exchange.add(
                    new Step(in.readByte() == 1 ? Step.By.HIM : Step.By.BLOCKER, in.readString(), readOptional(in)));
        }
        String factsBy = in.readString();
        Map<String, Set<String>> tagged = readSets(in);
        Map<String, Set<String>> closed = readSets(in);
        Map<String, Integer> numbers = new HashMap<>();
        for (int left = in.readVInt(); left > 0; left--) {
            numbers.put(in.readString(), in.readZInt());
        }
        return new IndexedRep(
                new Reading(id, evaluator, tags, exchange), new RepFacts(id, factsBy, tagged, closed, numbers));
    }

    static BytesRef sighting(Sighting sighting) throws IOException {
        return bytes(out -> {
            out.writeString(sighting.rep());
            out.writeString(sighting.game());
            out.writeZInt(sighting.quarter().orElse(-1));
            writeOptional(out, sighting.clock());
            writeOptional(out, sighting.video());
            writeOptional(out, sighting.start());
            writeOptional(out, sighting.end());
        });
    }

    static Sighting sighting(BytesRef bytes) throws IOException {
        DataInput in = input(bytes);
        String rep = in.readString();
        String game = in.readString();
        int quarter = in.readZInt();
        return new Sighting(
                rep,
                game,
                quarter < 0 ? OptionalInt.empty() : OptionalInt.of(quarter),
                readOptional(in),
                readOptional(in),
                readOptional(in),
                readOptional(in));
    }

    static BytesRef log(IndexedLog log) throws IOException {
        return bytes(out -> {
            Game game = log.game();
            out.writeString(log.evaluator());
            out.writeString(game.id());
            out.writeString(game.name());
            writeOptional(out, game.date().map(LocalDate::toString));
            out.writeString(game.opponent());
            out.writeString(game.level());
            writeProspect(out, log.prospect());
        });
    }

    static IndexedLog log(BytesRef bytes) throws IOException {
        DataInput in = input(bytes);
        String evaluator = in.readString();
        Game game = new Game(
                in.readString(),
                in.readString(),
                readOptional(in).map(LocalDate::parse),
                in.readString(),
                in.readString());
        return new IndexedLog(evaluator, readProspect(in), game);
    }

    static BytesRef prospect(Prospect prospect) throws IOException {
        return bytes(out -> writeProspect(out, prospect));
    }

    static Prospect prospect(BytesRef bytes) throws IOException {
        return readProspect(input(bytes));
    }

    static BytesRef page(Page page) throws IOException {
        return bytes(out -> {
            out.writeString(page.id());
            out.writeString(page.label());
            writeLists(out, Map.of("", page.names()));
            out.writeString(page.about());
        });
    }

    static Page page(BytesRef bytes) throws IOException {
        DataInput in = input(bytes);
        return new Page(in.readString(), in.readString(), readLists(in).getOrDefault("", List.of()), in.readString());
    }

    private static void writeProspect(DataOutput out, Prospect prospect) throws IOException {
        out.writeString(prospect.id());
        out.writeString(prospect.name());
        out.writeString(prospect.position());
        for (OptionalDouble size : List.of(prospect.heightCm(), prospect.weightKg(), prospect.armCm())) {
            out.writeLong(Double.doubleToLongBits(size.orElse(Double.NaN)));
        }
        out.writeString(prospect.team());
        out.writeString(prospect.classYear());
        out.writeString(prospect.notes());
    }

    private static Prospect readProspect(DataInput in) throws IOException {
        return new Prospect(
                in.readString(),
                in.readString(),
                in.readString(),
                readSize(in),
                readSize(in),
                readSize(in),
                in.readString(),
                in.readString(),
                in.readString());
    }

    private static OptionalDouble readSize(DataInput in) throws IOException {
        double size = Double.longBitsToDouble(in.readLong());
        return Double.isNaN(size) ? OptionalDouble.empty() : OptionalDouble.of(size);
    }

    private static void writeOptional(DataOutput out, Optional<String> text) throws IOException {
        out.writeByte((byte) (text.isPresent() ? 1 : 0));
        if (text.isPresent()) {
            out.writeString(text.get());
        }
    }

    private static Optional<String> readOptional(DataInput in) throws IOException {
        return in.readByte() == 0 ? Optional.empty() : Optional.of(in.readString());
    }

    private static void writeLists(DataOutput out, Map<String, ? extends Collection<String>> lists) throws IOException {
        out.writeVInt(lists.size());
        for (Map.Entry<String, ? extends Collection<String>> list : lists.entrySet()) {
            out.writeString(list.getKey());
            out.writeVInt(list.getValue().size());
            for (String value : list.getValue()) {
                out.writeString(value);
            }
        }
    }

    private static Map<String, List<String>> readLists(DataInput in) throws IOException {
        Map<String, List<String>> lists = new HashMap<>();
        for (int left = in.readVInt(); left > 0; left--) {
            String name = in.readString();
            List<String> values = new ArrayList<>();
            for (int more = in.readVInt(); more > 0; more--) {
                values.add(in.readString());
            }
            lists.put(name, values);
        }
        return lists;
    }

    private static Map<String, Set<String>> readSets(DataInput in) throws IOException {
        Map<String, Set<String>> sets = new HashMap<>();
        readLists(in).forEach((name, values) -> sets.put(name, new HashSet<>(values)));
        return sets;
    }
}
