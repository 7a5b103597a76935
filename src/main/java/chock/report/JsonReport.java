package chock.report;

import chock.assess.Assessment;
import chock.assess.Changes;
import chock.assess.ClosedBy;
import chock.assess.Claims;
import chock.assess.Disclosures;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.RidePlan;
import chock.assess.RunPlan;
import chock.assess.State;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Claim;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Registered;
import chock.rulebook.Applied;
import chock.rulebook.HouseBook;
import chock.rulebook.Source;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * The report for scripts: always an array, one object for each record judged. Every number that was measured or is a
 * limit is a decimal string, so that no reader rounds it. Keys are only ever added.
 */
public final class JsonReport {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private JsonReport() { }

    /** The array as text, with a line end. */
    public static String of(List<Assessment> assessments) {
        ArrayNode all = MAKE.arrayNode();
        assessments.forEach(assessment -> all.add(record(assessment)));
        return Json.pretty(all);
    }

    /** The same, each with what else was asked of it. */
    public static String answering(List<AnswersReport> answers) {
        ArrayNode all = MAKE.arrayNode();
        for (AnswersReport answer : answers) {
            ObjectNode node = record(answer.assessment());
            answer.addTo(node);
            all.add(node);
        }
        return Json.pretty(all);
    }

    /**
     * One line for a record out of many, with a line end: each gate's verdict and the checks that are not met.
     *
     * @param number line of the stream that the record stands on
     */
    public static String line(long number, Assessment assessment) {
        return line(MAKE.objectNode().put("line", number), assessment);
    }

    /** The same for a record out of an archive, where no line has a number. */
    public static String line(Assessment assessment) {
        return line(MAKE.objectNode(), assessment);
    }

    private static String line(ObjectNode node, Assessment assessment) {
        node.put("record", assessment.record().id()).put("asOf", Wording.iso(assessment.asOf(), assessment.record().zone()));
        node.putObject("rulebook").put("version", assessment.ruleBookVersion()).put("digest", assessment.ruleBookDigest()).set("house", house(assessment.house()));
        node.set("register", register(assessment.record().register()));
        law(assessment, node);
        ObjectNode gates = node.putObject("gates");
        for (GateVerdict gate : assessment.gates()) {
            ObjectNode one = gates.putObject(gate.gate().id());
            one.put("verdict", gate.verdict());
            one.put("holdsUntil", gate.holdsUntil() == null ? null : Wording.iso(gate.holdsUntil(), assessment.record().zone()));
            ObjectNode open = one.putObject("notMet");
            gate.findings().stream().filter(f -> f.state() != State.MET).forEach(f -> open.put(f.check(), f.state().id()));
            one.set("closedBy", texts(gate.closedBy().stream().map(ClosedBy::check).toList()));
            one.set("ruleBookFaults", texts(gate.ruleBookFaults()));
        }
        return node + "\n";
    }

    /** A moment as scripts read it, on the clock of the record's workshop. */
    public static String moment(Instant at, JobRecord record) {
        return Wording.iso(at, record.zone());
    }

    private static void law(Assessment assessment, ObjectNode node) {
        if (assessment.recordedLaw() != null) {
            node.put("recordedLaw", assessment.recordedLaw());
        }
    }

    private static ObjectNode record(Assessment assessment) {
        ObjectNode node = MAKE.objectNode();
        node.put("record", assessment.record().id());
        node.put("asOf", Wording.iso(assessment.asOf(), assessment.record().zone()));
        node.putObject("rulebook").put("version", assessment.ruleBookVersion()).put("digest", assessment.ruleBookDigest()).set("house", house(assessment.house()));
        law(assessment, node);
        ObjectNode gates = node.putObject("gates");
        assessment.gates().forEach(gate -> gates.set(gate.gate().id(), gate(assessment, gate)));
        node.set("unasked", texts(assessment.unasked()));
        disclosures(assessment.disclosures(), node);
        ArrayNode claims = node.putArray("claims");
        assessment.claims().forEach(weighed -> claims.add(claim(weighed)));
        ArrayNode overdue = node.putArray("overdue");
        assessment.overdue().forEach(o -> overdue.addObject().put("limit", o.limit().id()).put("territory", o.limit().territory())
                .put("reviewed", o.limit().reviewed().toString()).put("due", o.due().toString()));
        node.set("register", register(assessment.record().register()));
        return node;
    }

    private static void disclosures(Disclosures told, ObjectNode node) {
        ArrayNode unread = node.putArray("unread");
        for (Disclosures.Unread one : told.unread()) {
            ObjectNode item = unread.addObject().put("entry", one.entry()).put("says", one.says() + ". " + one.fate());
            item.set("readAt", texts(one.readAt()));
            item.put("counts", one.counts() == null ? null : one.counts().id());
        }
        ArrayNode defects = node.putArray("openDefects");
        told.defects().forEach(one -> defects.addObject().put("says", one.says()).set("entries", texts(one.entries())));
        ArrayNode lifted = node.putArray("lifted");
        told.lifted().forEach(one -> lifted.addObject().put("says", one.says()).set("entries", texts(one.entries())));
    }

    private static JsonNode house(HouseBook house) {
        return house == null ? NullNode.instance : MAKE.objectNode().put("name", house.name()).put("digest", house.digest());
    }

    private static JsonNode register(Registered register) {
        if (register == null) {
            return NullNode.instance;
        }
        ObjectNode node = MAKE.objectNode().put("digest", register.digest());
        node.set("unknown", texts(register.unknown()));
        return node;
    }

    private static ObjectNode claim(Claims.Weighed weighed) {
        Claim claim = weighed.claim();
        ObjectNode node = MAKE.objectNode();
        node.put("claim", claim.kind().word()).put("about", claim.about()).put("says", claim.says()).put("by", claim.by());
        node.set("supportedBy", texts(claim.supportedBy()));
        node.put("standing", weighed.standing().id()).put("why", weighed.says());
        node.set("evidence", texts(weighed.evidence()));
        return node;
    }

    private static ObjectNode gate(Assessment assessment, GateVerdict gate) {
        ObjectNode node = MAKE.objectNode();
        node.put("verdict", gate.verdict());
        node.put("holdsUntil", gate.holdsUntil() == null ? null : Wording.iso(gate.holdsUntil(), assessment.record().zone()));
        if (gate.changes() != null) {
            Changes changes = gate.changes();
            ObjectNode first = node.putObject("changes").put("at", changes.at() == null ? null : Wording.iso(changes.at(), assessment.record().zone()));
            first.set("checks", texts(changes.checks()));
        }
        ArrayNode findings = node.putArray("findings");
        gate.findings().forEach(finding -> findings.add(finding(finding)));
        ArrayNode closedBy = node.putArray("closedBy");
        gate.closedBy().forEach(closed -> closedBy.add(closedBy(closed)));
        ArrayNode notApplicable = node.putArray("notApplicable");
        gate.notApplicable().forEach(n -> notApplicable.addObject().put("check", n.check()).put("why", n.why()));
        node.set("ruleBookFaults", texts(gate.ruleBookFaults()));
        if (gate.gate() == Gate.ROAD_TEST) {
            RidePlan.of(assessment.record(), assessment).ifPresent(plan -> node.set("ridePlan", plan(plan)));
        }
        if (gate.gate() == Gate.INDOOR_RUN) {
            RunPlan.of(assessment.record(), assessment).ifPresent(plan -> node.set("runPlan", runPlan(plan)));
        }
        return node;
    }

    private static ObjectNode finding(Finding finding) {
        ObjectNode node = MAKE.objectNode();
        node.put("check", finding.check());
        node.put("state", finding.state().id());
        node.set("notes", texts(finding.notes()));
        node.put("says", finding.says());
        node.set("measured", measured(finding.measured()));
        node.set("limit", limit(finding.limit()));
        node.put("remedy", finding.remedy());
        node.put("caution", finding.caution());
        node.set("evidence", texts(finding.evidence()));
        node.set("margin", quantity(finding.margin()));
        node.put("critical", finding.critical());
        ArrayNode places = node.putArray("places");
        finding.places().forEach(place -> places.add(place(place)));
        return node;
    }

    /** A known fault that closes the gate though it does not ask for it: as a finding, with what it can do and who asks for it. */
    private static ObjectNode closedBy(ClosedBy closed) {
        ObjectNode node = finding(closed.fault());
        ArrayNode dangers = node.putArray("dangers");
        for (int i = 0; i < closed.dangers().size(); i++) {
            dangers.addObject().put("danger", closed.dangers().get(i)).put("says", closed.words().get(i));
        }
        node.set("askedAt", texts(closed.askedAt().stream().map(Gate::id).toList()));
        return node;
    }

    private static ObjectNode place(Finding.AtPlace place) {
        ObjectNode node = MAKE.objectNode();
        node.put("point", place.point());
        node.put("state", place.state().id());
        node.set("notes", texts(place.notes()));
        node.put("says", place.says());
        node.set("measured", measured(place.measured()));
        node.set("limit", limit(place.limit()));
        node.set("evidence", texts(place.evidence()));
        node.set("margin", quantity(place.margin()));
        return node;
    }

    private static ObjectNode runPlan(RunPlan plan) {
        ObjectNode node = MAKE.objectNode().put("mayRun", plan.mayRun()).put("says", plan.says());
        node.set("caution", texts(plan.caution()));
        ArrayNode figures = node.putArray("figures");
        for (RunPlan.Amount figure : plan.figures()) {
            ObjectNode one = figures.addObject().put("id", figure.id()).put("name", figure.name()).put("says", figure.says());
            one.set("amount", quantity(figure.amount()));
            one.set("source", figure.source() == null ? NullNode.instance : source(figure.source(), List.of()));
        }
        node.set("restsOn", texts(plan.restsOn()));
        ArrayNode parts = node.putArray("parts");
        plan.parts().forEach(part -> parts.addObject().put("id", part.id()).put("title", part.title()).put("numbered", part.numbered()).set("lines", texts(part.lines())));
        return node;
    }

    private static ObjectNode plan(RidePlan plan) {
        ObjectNode node = MAKE.objectNode().put("rideable", plan.rideable()).put("says", plan.says());
        ArrayNode restraints = node.putArray("limits");
        plan.restraints().forEach(restraint -> restraints.add(restraint(restraint)));
        ArrayNode steps = node.putArray("steps");
        plan.steps().forEach(step -> steps.add(step(step)));
        node.set("stopWhen", lines(plan.stop()));
        node.set("onReturn", lines(plan.back()));
        return node;
    }

    private static ObjectNode restraint(RidePlan.Restraint restraint) {
        ObjectNode node = MAKE.objectNode().put("id", restraint.id()).put("because", restraint.because());
        node.set("points", texts(restraint.points()));
        node.set("evidence", texts(restraint.evidence()));
        node.set("upTo", line(restraint.upTo()));
        node.set("lines", lines(restraint.lines()));
        return node;
    }

    private static ObjectNode step(RidePlan.Step step) {
        ObjectNode node = MAKE.objectNode().put("id", step.id()).put("title", step.title());
        node.set("upTo", line(step.upTo()));
        node.put("leftOut", step.leftOut());
        node.set("do", lines(step.doing()));
        node.set("feelFor", lines(step.feel()));
        return node;
    }

    private static ArrayNode lines(List<RidePlan.Line> lines) {
        ArrayNode node = MAKE.arrayNode();
        lines.forEach(line -> node.add(line(line)));
        return node;
    }

    private static JsonNode line(RidePlan.Line line) {
        if (line == null) {
            return NullNode.instance;
        }
        ObjectNode node = MAKE.objectNode().put("says", line.says());
        node.set("amount", quantity(line.amount()));
        node.set("source", line.source() == null ? NullNode.instance : source(line.source(), List.of()));
        return node;
    }

    static JsonNode measured(Measured measured) {
        if (measured == null) {
            return NullNode.instance;
        }
        Quantity value = measured.value();
        Quantity u = measured.uncertainty();
        return MAKE.objectNode().put("value", decimal(value)).put("unit", value.unit().symbol())
                .put("uncertainty", u == null ? null : decimal(u.differenceTo(value.unit())));
    }

    static JsonNode quantity(Quantity quantity) {
        return quantity == null ? NullNode.instance
                : MAKE.objectNode().put("value", decimal(quantity)).put("unit", quantity.unit().symbol());
    }

    /** The sense is that of the range allowed, so that {@code value} and {@code sense} can be read without the maker's figure. */
    static JsonNode limit(Applied limit) {
        if (limit == null) {
            return NullNode.instance;
        }
        Bounds bounds = limit.bounds();
        boolean closed = bounds.low() != null && bounds.high() != null;
        Quantity only = bounds.low() != null ? bounds.low() : bounds.high();
        ObjectNode node = MAKE.objectNode().put("id", limit.id());
        node.set("value", closed ? range(bounds) : TextNode.valueOf(decimal(only)));
        node.put("unit", only.unit().symbol());
        node.put("sense", closed ? "between" : bounds.low() != null ? "at-least" : "at-most");
        node.set("source", source(limit.source(), limit.others()));
        return node;
    }

    private static ObjectNode range(Bounds bounds) {
        return MAKE.objectNode().put("from", decimal(bounds.low())).put("to", decimal(bounds.high().to(bounds.low().unit())))
                .put("unit", bounds.low().unit().symbol());
    }

    private static ObjectNode source(Source source, List<String> others) {
        ObjectNode node = MAKE.objectNode();
        node.put("kind", source.kind().name().toLowerCase(Locale.ROOT));
        node.put("document", source.document());
        node.put("section", source.section());
        node.put("known", source.known() == null ? null : source.known().words());
        node.put("says", source.words());
        node.set("others", texts(others));
        return node;
    }

    static ArrayNode texts(List<String> texts) {
        ArrayNode node = MAKE.arrayNode();
        texts.forEach(node::add);
        return node;
    }

    private static String decimal(Quantity quantity) {
        return quantity.value().toPlainString();
    }
}
