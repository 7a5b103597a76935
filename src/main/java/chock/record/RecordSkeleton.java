package chock.record;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A job record to fill in. Until every blank is filled, {@link RecordReader} refuses it and names the blanks. */
public final class RecordSkeleton {
    private static final int WIDTH = 110;

    private RecordSkeleton() { }

    /** The form as YAML, with what may stand at each place in a comment, by the words of one rule book. */
    public static String yaml(Vocabulary words) {
        return """
                # A job record: all that was written about one machine. Fill in every blank. Nothing may be left out:
                # where there is none, the word none (or 0, or []) is written.
                chock: job-record/2
                record:                  # the record's own number, such as HV-0142
                workshop:                # name of the workshop
                zone:                    # its time zone, such as Europe/London; all times are the time there
                territory:               # ISO 3166 code of where the machine will be ridden, such as GB or US-VA
                one-person:              # yes only when one person works alone, else no
                seeks:                   # the gates asked for, such as [road-test]: %s
                machine:
                  marque:
                  model:
                  frame-number:          # read off the frame, or none
                  engine-number:         # read off the engine, or none
                  kind:                  # %s
                  built:                 # year
                  first-registered:      # day, such as 1974-06-14
                  top-speed:             # such as 120 km/h
                  seats:                 # 1 to 9
                  engine:
                    cycle:               # %s
                    displacement:        # such as 246 cc; 0 cc when electric
                    cylinders:           # 0 when electric
                    oiling:              # %s
                    ignition:            # %s
                    cooling:             # %s
                  front-brake:
                    type:                # %s
                    worked-by:           # %s
                    discs:               # 1 or 2 for a disc brake, else 0
                    lining:              # %s
                    stop-lamp-switch:    # yes or no
                  rear-brake:
                    type:
                    worked-by:
                    discs:
                    lining:
                    stop-lamp-switch:
                  linked-brakes:         # yes or no
                  front-wheel:
                    rim:                 # %s
                    spoked:              # yes or no
                    tube:                # yes or no
                  rear-wheel:
                    rim:
                    spoked:
                    tube:
                  drive:                 # %s
                  volts:                 # volts of the battery, 0 when it has none
                  equipment:
                    starter:             # %s
                    carburettors:        # 0 to 4; 0 when electric or injected
                    fuel-tap:            # %s
                    clutch:              # %s
                    front-springing:     # %s
                    rear-springing:      # %s
                    lamps:               # yes or no
                    indicators:          # yes or no
                    horn:                # yes or no
                    mirrors:             # 0 to 2
                    stands:              # 0 to 2
                    speedometer:         # yes or no
                  history:               # %s; unknown when bought in without a record of its work
                  battery:               # %s
                  generator:             # yes, or no where nothing on the machine charges the battery
                  laid-up-since:         # day, month or year since which it stood when it came in, unknown, or no
                  # Parts that most machines do not have, each yes or no:
                  # parts: {%s: yes}
                  # What it was built with, from a document about this model with its page, or with none and compared by a second
                  # person. Further fields of the description may be named as well.
                  as-built:
                    document:            # title, or none; with none, leave page out
                    page:
                    by:                  # id of the person
                    # seconded-by:       # id of the second person
                    facts:
                %s  # What work changed in the description since, one field to a line; the fields above say how it is now:
                  # changes:
                  # - {at: 2026-11-20 10:10, by: id, field: front-brake.type, from: drum, to: disc, because: entry}
                maker:
                  # Figures from the maker's manual for this machine, or [] when there are none. One to a line:
                  # - {for: limit, at: place, at-least: 4.5 mm, document: title, page: 61, by: id, seconded-by: id}
                  # (at-least, at-most or both, or is; at and seconded-by may be left out)
                  figures:
                  # Looked for in the manual and not found, or [] when all were found: [limit, limit @ place]
                  none-found:
                # The law where it will be ridden, only where the rule book does not have it; both lists may be []. Without
                # seconded-by nothing is settled.
                # local-law:
                #   limits:
                #     - {limit: id, at-least: 1.6 mm, document: title, section: section, as-of: 2024-12-31, by: id, seconded-by: id}
                #   sets-none:
                #     - {limit: id, document: title, section: whole, as-of: 2024-12-31, by: id, seconded-by: id}
                people:
                  - id:                  # short, used below
                    name:                # full name
                    role:                # technician, inspector or lead
                # What readings are taken with; [] when nothing was measured.
                instruments:
                  - id:                  # short, used below
                    kind:                # see the list at the end
                    uncertainty:         # its expanded uncertainty (k = 2), such as 0.1 mm, or by-kind
                    calibrated:          # day of its last calibration
                    due:                 # last day on which that counts
                    # certificate:       # its number, where the uncertainty above is less than usual for its kind
                # One entry says one thing. Forms:
                # - {id: e1, at: 2026-11-20 09:40, by: id, point: place, measured: aspect, is: 3.1 mm ± 0.1 mm, with: instrument}
                # - {id: e2, at: 2026-11-20 09:45, by: id, point: place, seen: aspect, is: answer}   (tried, told, assumed likewise)
                # - {id: e3, at: 2026-11-20 10:10, by: id, point: place, done: work}
                # - {id: e6, at: 2026-11-20 10:30, by: id, point: place, done: torqued, is: 24 N·m, with: torque-wrench}
                # - {id: e4, at: 2026-11-22 11:00, by: id, instrument: id, found-out: how it was found out of tolerance}
                # - {id: e5, at: 2026-11-22 15:00, by: id, inspected: passed, licence: number, inspector: name, document: number}
                # - {id: e7, at: 2026-11-22 15:10, by: id, point: place, defect: "what is wrong, in your own words", dangers: [fire]}
                # - {id: e8, at: 2026-11-23 09:00, by: another id, closed: e7, reason: what was found}
                # (dangers may be left out: %s)
                # A correction is a later entry with corrects: e1 and a reason: in it. A note: may stand in any, with
                # note-is: remark or note-is: defect beside it where it is about something safety-critical.
                entries:
                  - id:
                    at:                  # day and time, such as 2026-11-20 09:40
                    by:
                    point:
                    seen:
                    is:
                # What is said of the machine, such as by its seller; [] when nothing is. One to a line:
                # - {claim: kind, about: place, says: "rear tyre new in May", by: seller, supported-by: [e1]}   (%s)
                claims:
                """.formatted(list(Arrays.stream(Gate.values()).map(Gate::id).toList()), of(Machine.Kind.class),
                        of(Machine.Cycle.class), of(Machine.Oiling.class), of(Machine.Ignition.class), of(Machine.Cooling.class),
                        of(Machine.BrakeType.class), of(Machine.WorkedBy.class), of(Machine.Lining.class), of(Machine.Rim.class), of(Machine.Drive.class),
                        of(Machine.Starter.class), of(Machine.FuelTap.class), of(Machine.Clutch.class), of(Machine.FrontSpringing.class),
                        of(Machine.RearSpringing.class), of(Machine.History.class), of(Machine.Battery.class), Arrays.stream(Machine.Part.values()).map(Machine.Part::word).collect(Collectors.joining(": yes, ")), asBuilt(words), of(Danger.class), of(Claim.Kind.class))
                + "\n" + vocabulary(words);
    }

    private static String asBuilt(Vocabulary words) {
        return words.fields().stream().filter(FieldRule::asBuilt).map(rule -> "      " + rule.field() + ":\n").collect(Collectors.joining());
    }

    private static String vocabulary(Vocabulary words) {
        return lines("Limits a maker's figure may speak to", words.limits().keySet())
                + lines("Limits for which local law is asked", words.law().sides().keySet())
                + lines("Kinds of instrument", words.instruments().keySet())
                + lines("Places", words.points())
                + lines("Aspects", words.aspects().values().stream().map(RecordSkeleton::aspect).toList())
                + lines("Work", words.works().keySet());
    }

    private static String aspect(Vocabulary.Aspect aspect) {
        return aspect.name() + switch (aspect.form()) {
            case AMOUNT -> " (amount)";
            case DAYS -> " (day, month or year)";
            case CODE -> " (as marked)";
            case ANSWER -> " (" + String.join(" or ", new TreeSet<>(aspect.answers())) + ")";
        };
    }

    private static String of(Class<? extends Enum<?>> kind) {
        return list(Reading.spellings(kind));
    }

    private static String list(List<String> words) {
        return words.stream().collect(Collectors.joining(", "));
    }

    private static String lines(String title, Collection<String> items) {
        StringBuilder all = new StringBuilder("# " + title + ":\n");
        StringBuilder line = new StringBuilder();
        for (String item : new TreeSet<>(items)) {
            if (!line.isEmpty() && line.length() + item.length() > WIDTH) {
                all.append("#   ").append(line).append(",\n");
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : ", ").append(item);
        }
        return all.append("#   ").append(line).append('\n').toString();
    }
}
