package chock.assess;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.AsBuilt;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.Past;
import chock.record.RecordForm;
import chock.record.RecordReader;
import chock.record.Value;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.util.Locale;

/** Writes a record down as a shop would, and reads it again. */
final class WrittenRecord {
    private static final ObjectMapper JSON = new ObjectMapper();

    private WrittenRecord() { }

    static JobRecord readAgain(JobRecord record) {
        try {
            return RecordReader.read("written.json", JSON.writeValueAsBytes(of(record)), Examples.BOOK.vocabulary(), Examples.DAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ObjectNode of(JobRecord r) {
        ObjectNode all = JSON.createObjectNode();
        all.put("chock", RecordForm.name(r.form())).put("record", r.id()).put("workshop", r.workshop()).put("zone", r.zone().getId()).put("territory", r.territory()).put("one-person", yes(r.onePerson()));
        ArrayNode seeks = all.putArray("seeks");
        r.seeks().forEach(g -> seeks.add(g.id()));
        all.set("machine", parts(r.machine()));
        ObjectNode maker = all.putObject("maker");
        ArrayNode figures = maker.putArray("figures");
        r.maker().figures().forEach(f -> {
            ObjectNode figure = figures.addObject().put("for", f.limit()).put("document", f.document()).put("page", f.page()).put("by", f.by());
            written(figure, "at-least", f.atLeast());
            written(figure, "at-most", f.atMost());
            written(figure, "is", f.nominal());
        });
        ArrayNode none = maker.putArray("none-found");
        r.maker().noneFound().forEach(none::add);
        ArrayNode people = all.putArray("people");
        r.people().forEach(p -> people.addObject().put("id", p.id()).put("name", p.name()).put("role", p.role()));
        ArrayNode instruments = all.putArray("instruments");
        r.instruments().forEach(i -> instruments.addObject().put("id", i.id()).put("kind", i.kind()).put("uncertainty", i.uncertainty() == null ? "by-kind" : words(i.uncertainty()))
                .put("calibrated", i.calibrated().toString()).put("due", i.due().toString()));
        ArrayNode entries = all.putArray("entries");
        r.entries().forEach(e -> entries.add(entry(e)));
        all.putArray("claims");
        return all;
    }

    private static ObjectNode entry(Entry e) {
        ObjectNode line = JSON.createObjectNode().put("id", e.id()).put("at", e.at().toString()).put("by", e.by()).put(e.deed().key(), e.what());
        switch (e.deed()) {
            case FOUND_OUT -> line.put("instrument", e.point());
            case INSPECTED -> line.put("licence", e.is().toString()).put("inspector", "Ann Thrale").put("document", "12");
            default -> line.put("point", e.point());
        }
        if (e.deed().isEvidence()) {
            line.put("is", e.is() instanceof Value.Amount amount ? words(amount.measured()) : e.is().toString());
        }
        if (e.at().seq() > 0) {
            line.put("seq", e.at().seq());
        }
        if (e.deed() == Deed.DEFECT && !e.dangers().isEmpty()) {
            var dangers = line.putArray("dangers");
            e.dangers().forEach(danger -> dangers.add(danger.id()));
        }
        written(line, "note-is", e.noteIs() == null ? null : e.noteIs().name().toLowerCase(Locale.ROOT));
        written(line, "with", e.with());
        written(line, "corrects", e.corrects());
        written(line, "reason", e.reason());
        return line;
    }

    private static void written(ObjectNode line, String key, String text) {
        if (text != null) {
            line.put(key, text);
        }
    }

    /** The keys of a record file are the names of the parts, with dashes. */
    private static ObjectNode parts(Record part) {
        ObjectNode node = JSON.createObjectNode();
        for (RecordComponent component : part.getClass().getRecordComponents()) {
            Object value;
            try {
                value = component.getAccessor().invoke(part);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
            String key = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
            if (value instanceof Past past) {
                written(node, past);
            } else if (value instanceof Machine.Further further) {
                node.put("battery", further.battery().word()).put("generator", yes(further.generator()));
            } else if (value instanceof Quantity quantity) {
                node.put(key, words(quantity));
            } else if (value instanceof Record below) {
                node.set(key, parts(below));
            } else {
                node.put(key, value instanceof Boolean answer ? yes(answer) : value instanceof Enum<?> word ? word.name().toLowerCase(Locale.ROOT).replace('_', '-') : String.valueOf(value));
            }
        }
        return node;
    }

    private static void written(ObjectNode machine, Past past) {
        AsBuilt built = past.asBuilt();
        if (built != null) {
            ObjectNode line = machine.putObject("as-built").put("document", built.document() == null ? "none" : built.document()).put("by", built.by());
            written(line, "page", built.page());
            written(line, "seconded-by", built.secondedBy());
            ObjectNode facts = line.putObject("facts");
            built.facts().forEach(facts::put);
        }
        if (!past.changes().isEmpty()) {
            ArrayNode lines = machine.putArray("changes");
            past.changes().forEach(c -> lines.addObject().put("at", c.at().toString()).put("by", c.by()).put("field", c.field()).put("from", c.from()).put("to", c.to()).put("because", c.because()));
        }
    }

    private static String words(Measured measured) {
        return words(measured.value()) + (measured.uncertainty() == null ? "" : " ± " + words(measured.uncertainty()));
    }

    private static void written(ObjectNode figure, String key, Quantity quantity) {
        if (quantity != null) {
            figure.put(key, words(quantity));
        }
    }

    private static String words(Quantity quantity) {
        return quantity.value().toPlainString() + " " + quantity.unit().symbol();
    }

    private static String yes(boolean answer) {
        return answer ? "yes" : "no";
    }
}
