package chock.assess;

import chock.assess.facts.BrakeFact;
import chock.assess.facts.Closure;
import chock.assess.facts.Correction;
import chock.assess.facts.CylinderFact;
import chock.assess.facts.Defect;
import chock.assess.facts.DiscFact;
import chock.assess.facts.EngineFact;
import chock.assess.facts.EquipmentFact;
import chock.assess.facts.Evidence;
import chock.assess.facts.FoundOut;
import chock.assess.facts.Inspection;
import chock.assess.facts.MachineFact;
import chock.assess.facts.NumberFact;
import chock.assess.facts.PadFact;
import chock.assess.facts.WheelFact;
import chock.assess.facts.Work;
import chock.assess.facts.WorkshopFact;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.FieldRule;
import chock.record.JobRecord;
import chock.record.Machine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What of a job record the rules are told: the parts of the machine, and the entries in order of time. */
final class Facts {
    private Facts() { }

    /** @param fields what the rule book makes of the fields of the description */
    static List<Object> of(JobRecord record, List<FieldRule> fields) {
        List<Object> facts = new ArrayList<>(machine(record));
        facts.addAll(Described.facts(record, fields));
        entries(record, facts);
        return facts;
    }

    /** The machine and its parts, as they are described. */
    static List<Object> machine(JobRecord record) {
        List<Object> parts = new ArrayList<>();
        Machine m = record.machine();
        parts.add(new MachineFact(m.kind(), m.built().getValue(), m.firstRegistered(), m.linkedBrakes(), m.seats(), m.volts(), m.drive(), record.territory(), m.topSpeed(),
                m.history() == Machine.History.KNOWN, m.further(), m.parts()));
        parts.add(new EngineFact(m.engine().cycle(), m.engine().displacement(), m.engine().cylinders(), m.engine().oiling(), m.engine().ignition(), m.engine().cooling()));
        parts.add(new WorkshopFact(record.onePerson()));
        parts.add(new NumberFact("frame", m.frameNumber()));
        parts.add(new NumberFact("engine", m.engineNumber()));
        Machine.Equipment e = m.equipment();
        parts.add(new EquipmentFact(e.starter(), e.carburettors(), e.fuelTap(), e.clutch(), e.frontSpringing(), e.rearSpringing(), e.lamps(), e.indicators(),
                e.horn(), e.mirrors(), e.stands(), e.speedometer()));
        for (int number = 1; number <= m.engine().cylinders(); number++) {
            parts.add(new CylinderFact(number, "engine/cylinder-" + number));
        }
        for (Machine.End end : m.ends()) {
            String brake = end.name() + "-brake";
            parts.add(new BrakeFact(end.name(), end.brake().type(), end.brake().workedBy(), end.brake().discs(), end.brake().lining(), end.brake().stopLampSwitch(), brake));
            List<String> sides = end.brake().discs() == 2 ? List.of("left-", "right-") : end.brake().discs() == 1 ? List.of("") : List.of();
            for (String side : sides) {
                String caliper = brake + "/" + side + "caliper";
                parts.add(new DiscFact(end.name(), brake + "/" + side + "disc", caliper));
                parts.add(new PadFact(end.name(), caliper, caliper + "/inner-pad"));
                parts.add(new PadFact(end.name(), caliper, caliper + "/outer-pad"));
            }
            String wheel = end.name() + "-wheel";
            parts.add(new WheelFact(end.name(), end.wheel().rim(), end.wheel().spoked(), end.wheel().tube(), wheel, wheel + "/tyre"));
        }
        return parts;
    }

    private static void entries(JobRecord record, List<Object> facts) {
        List<Entry> byTime = record.entries().stream().sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).toList();
        for (Entry entry : byTime) {
            if (entry.deed().isEvidence() || entry.deed() == Deed.DONE) {
                facts.add(new Evidence(entry, Entry.key(entry.point(), entry.what()), entry.with() == null ? null : record.instrument(entry.with()).orElseThrow()));
            }
            if (entry.deed() == Deed.DONE) {
                facts.add(new Work(entry));
            }
            if (entry.deed() == Deed.FOUND_OUT) {
                facts.add(new FoundOut(entry));
            }
            if (entry.deed() == Deed.DEFECT) {
                facts.add(new Defect(entry));
            }
            if (entry.deed() == Deed.CLOSED) {
                facts.add(new Closure(entry));
            }
            if (entry.deed() == Deed.INSPECTED) {
                facts.add(new Inspection(entry));
            }
            record.lastCorrectionOf(entry.id()).ifPresent(last -> facts.add(new Correction(entry.id(), last)));
        }
    }
}
