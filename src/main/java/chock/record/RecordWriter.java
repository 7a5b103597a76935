package chock.record;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;

/** Writes a record as the file that {@link RecordReader} would read it from. */
public final class RecordWriter {
    private static final JsonNodeFactory NEW = JsonNodeFactory.instance;

    private final JobRecord record;
    private final Set<String> byKind;

    private RecordWriter(JobRecord record, Set<String> byKind) {
        this.record = record;
        this.byKind = byKind;
    }

    /**
     * The file, as JSON in UTF-8.
     *
     * @param byKind ids of readings to write without their uncertainty, so that the reader takes it from the kind of instrument
     */
    public static byte[] write(JobRecord record, Set<String> byKind) {
        return new RecordWriter(record, byKind).job().toString().getBytes(StandardCharsets.UTF_8);
    }

    private ObjectNode job() {
        ObjectNode job = NEW.objectNode();
        job.put("chock", RecordForm.name(record.form())).put("record", record.id()).put("workshop", record.workshop()).put("zone", record.zone().getId())
                .put("territory", record.territory()).put("one-person", yes(record.onePerson()));
        ArrayNode seeks = job.putArray("seeks");
        record.seeks().stream().map(Gate::id).forEach(seeks::add);
        job.set("machine", machine(record.machine()));
        ObjectNode maker = job.putObject("maker");
        ArrayNode figures = maker.putArray("figures");
        record.maker().figures().forEach(figure -> figures.add(figure(figure)));
        ArrayNode none = maker.putArray("none-found");
        record.maker().noneFound().forEach(none::add);
        if (!record.localLaw().isEmpty()) {
            ObjectNode law = job.putObject("local-law");
            ArrayNode limits = law.putArray("limits");
            record.localLaw().limits().forEach(line -> limits.add(law(line)));
            ArrayNode searched = law.putArray("sets-none");
            record.localLaw().setsNone().forEach(line -> searched.add(law(line)));
        }
        ArrayNode people = job.putArray("people");
        record.people().forEach(person -> people.add(person(person)));
        ArrayNode instruments = job.putArray("instruments");
        record.instruments().forEach(instrument -> instruments.add(instrument(instrument)));
        ArrayNode entries = job.putArray("entries");
        record.entries().forEach(entry -> entries.add(entry(entry)));
        ArrayNode claims = job.putArray("claims");
        record.claims().forEach(claim -> claims.add(claim(claim)));
        return job;
    }

    private ObjectNode machine(Machine machine) {
        ObjectNode written = NEW.objectNode().put("marque", machine.marque()).put("model", machine.model()).put("frame-number", machine.frameNumber())
                .put("first-registered", machine.firstRegistered().toString()).put("history", Reading.spelled(machine.history()));
        for (Map.Entry<String, String> field : machine.fields().entrySet()) {
            String name = field.getKey();
            int dot = name.indexOf('.');
            // The first form has no place for what the second one brought.
            if (name.startsWith("parts.")) {
                continue;
            } else if (dot > 0) {
                written.withObjectProperty(name.substring(0, dot)).put(name.substring(dot + 1), field.getValue());
            } else if (record.form() > 1 || !name.equals("battery") && !name.equals("generator")) {
                written.put(name, field.getValue());
            }
        }
        Machine.LaidUp laidUp = machine.further().laidUp();
        if (laidUp != null) {
            written.put("laid-up-since", !laidUp.known() ? "unknown" : laidUp.since() == null ? "no" : laidUp.since().toString());
        }
        if (!machine.further().parts().isEmpty()) {
            ObjectNode parts = written.putObject("parts");
            machine.further().parts().forEach((part, has) -> parts.put(part.word(), yes(has)));
        }
        AsBuilt built = machine.past().asBuilt();
        if (built != null) {
            written.set("as-built", asBuilt(built));
        }
        if (!machine.past().rebuilds().isEmpty()) {
            ArrayNode changes = written.putArray("changes");
            machine.past().rebuilds().forEach(rebuild -> rebuild.changes().forEach(change -> changes.add(change(change))));
        }
        return written;
    }

    private static ObjectNode asBuilt(AsBuilt built) {
        ObjectNode written = NEW.objectNode().put("document", built.document() == null ? "none" : built.document());
        putIfSaid(written, "page", built.page());
        written.put("by", built.by());
        putIfSaid(written, "seconded-by", built.secondedBy());
        ObjectNode facts = written.putObject("facts");
        built.facts().forEach(facts::put);
        return written;
    }

    private static ObjectNode change(DescriptionChange change) {
        return NEW.objectNode().put("at", change.at().toString()).put("by", change.by()).put("field", change.field()).put("from", change.from()).put("to", change.to()).put("because", change.because());
    }

    private static ObjectNode figure(MakerFigure figure) {
        ObjectNode written = NEW.objectNode().put("for", figure.limit());
        putIfSaid(written, "at", figure.point());
        putIfSaid(written, "at-least", amount(figure.atLeast()));
        putIfSaid(written, "at-most", amount(figure.atMost()));
        putIfSaid(written, "is", amount(figure.nominal()));
        written.put("document", figure.document()).put("page", figure.page()).put("by", figure.by());
        putIfSaid(written, "seconded-by", figure.secondedBy());
        return written;
    }

    private static ObjectNode law(LocalLaw.Line line) {
        ObjectNode written = NEW.objectNode().put("limit", line.limit());
        putIfSaid(written, "at-least", amount(line.atLeast()));
        putIfSaid(written, "at-most", amount(line.atMost()));
        written.put("document", line.document()).put("section", line.section()).put("as-of", line.asOf().toString()).put("by", line.by());
        putIfSaid(written, "seconded-by", line.secondedBy());
        return written;
    }

    private static ObjectNode person(Person person) {
        return NEW.objectNode().put("id", person.id()).put("name", person.name()).put("role", person.role());
    }

    private ObjectNode instrument(Instrument instrument) {
        ObjectNode written = NEW.objectNode().put("id", instrument.id()).put("kind", instrument.kind()).put("uncertainty", instrument.uncertainty() == null ? "by-kind" : amount(instrument.uncertainty()))
                .put("calibrated", instrument.calibrated().toString()).put("due", instrument.due().toString());
        putIfSaid(written, "certificate", record.form() > 1 ? instrument.certificate() : null);
        return written;
    }

    private ObjectNode entry(Entry entry) {
        Moment at = entry.at();
        ObjectNode written = NEW.objectNode().put("id", entry.id()).put("at", at.toString()).put("by", entry.by());
        putIfSaid(written, "seq", at.seq() == 0 ? null : at.seq());
        putIfSaid(written, "corrects", entry.corrects());
        putIfSaid(written, "reason", entry.reason());
        written.put(entry.deed().key(), entry.what());
        if (entry.deed() == Deed.FOUND_OUT) {
            written.put("instrument", entry.point());
        } else if (entry.deed() == Deed.INSPECTED) {
            Inspection inspection = Inspection.of(entry);
            written.put("licence", entry.is().toString()).put("inspector", inspection.inspector()).put("document", inspection.document());
        } else if (entry.deed() != Deed.CLOSED) {
            written.put("point", entry.point());
            putIfSaid(written, "is", said(entry));
        }
        putIfSaid(written, "with", entry.with());
        if (!entry.dangers().isEmpty()) {
            ArrayNode dangers = written.putArray("dangers");
            entry.dangers().stream().map(Danger::id).sorted().forEach(dangers::add);
        }
        putIfSaid(written, "note", entry.deed() == Deed.INSPECTED ? Inspection.of(entry).note() : entry.note());
        putIfSaid(written, "note-is", entry.noteIs() == null ? null : Reading.spelled(entry.noteIs()));
        return written;
    }

    private static ObjectNode claim(Claim claim) {
        ObjectNode written = NEW.objectNode().put("claim", claim.kind().word()).put("about", claim.about()).put("says", claim.says()).put("by", claim.by());
        ArrayNode entries = written.putArray("supported-by");
        claim.supportedBy().forEach(entries::add);
        return written;
    }

    private String said(Entry entry) {
        if (!(entry.is() instanceof Value.Amount amount)) {
            return entry.is() == null ? null : entry.is().toString();
        }
        Measured measured = amount.measured();
        return amount(measured.value()) + (measured.uncertainty() == null || byKind.contains(entry.id()) ? "" : " ± " + amount(measured.uncertainty()));
    }

    // A count is written with its unit, which nobody says.
    private static String amount(Quantity quantity) {
        return quantity == null ? null : quantity.value().toPlainString() + " " + quantity.unit().symbol();
    }

    private static void putIfSaid(ObjectNode written, String key, Object value) {
        if (value != null) {
            written.put(key, value.toString());
        }
    }

    private static String yes(boolean so) {
        return so ? "yes" : "no";
    }
}
