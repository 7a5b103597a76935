package chock.record;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A job record as it is typed: keys in their places, every value still a text. The message of a constraint is the
 * advice that the reader is given. The keys of the file are the names here with dashes. A key that a later form of the
 * record brought is marked {@link Since}.
 */
final class Raw {
    static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";
    private static final String ID_ADVICE = "Write a short id of letters, figures, dots and dashes, such as e1";
    static final String FORM = "job-record/[12]";
    static final String TERRITORY = "[A-Z]{2}(-[A-Z0-9]{1,3})?";
    static final String YEAR = "\\d{4}";
    static final String ROLE = "technician|inspector|lead";
    static final String DAY = "\\d{4}-\\d{2}-\\d{2}";

    private Raw() { }

    record Job(
            @NotBlank(message = "Write job-record/2") @Pattern(regexp = FORM, message = "Write job-record/2; records that begin with job-record/1 are read as well") String chock,
            @NotBlank(message = "Write the record's own number, such as HV-0142") String record,
            @NotBlank(message = "Write the workshop's name") String workshop,
            @NotBlank(message = "Write the workshop's time zone, such as Europe/London") String zone,
            @NotBlank(message = "Write the ISO 3166 code of where the machine will be ridden, such as GB or US-VA")
            @Pattern(regexp = TERRITORY, message = "Write the ISO 3166 code in capitals, such as GB or US-VA") String territory,
            @NotBlank(message = "Write no, or yes when one person works alone") String onePerson,
            @NotEmpty(message = "Write the gates asked for, such as [road-test]") List<String> seeks,
            @NotNull(message = "Write the machine") @Valid Machine machine,
            @NotNull(message = "Write the maker's figures, and those looked for and not found") @Valid Maker maker,
            @NotEmpty(message = "Write at least the person who makes the entries") List<@NotNull(message = "Write a person") @Valid Person> people,
            @NotNull(message = "Write the instruments, or [] when nothing was measured") List<@NotNull(message = "Write an instrument") @Valid Instrument> instruments,
            @NotNull(message = "Write the entries, or [] when there are none yet") List<@NotNull(message = "Write an entry") @Valid Entry> entries,
            @NotNull(message = "Write what is claimed of the machine, or [] when nothing is") List<@NotNull(message = "Write a claim") @Valid Claim> claims,
            @Since(2) @Valid LocalLaw localLaw,
            @Since(2) List<Object> sessions) {

        /** Sessions were written out as entries before the record comes here. */
        Job {
            if (sessions != null) {
                throw new IllegalStateException("sessions are written out before they are put in their places");
            }
        }
    }

    record Machine(
            @NotBlank(message = "Write the marque") String marque,
            @NotBlank(message = "Write the model") String model,
            @NotBlank(message = "Write the number, or the word none") String frameNumber,
            @NotBlank(message = "Write the number, or the word none") String engineNumber,
            @NotBlank(message = "Write motorcycle, motorcycle-sidecar, moped or moped-3w") String kind,
            @NotBlank(message = "Write the year, such as 1974") @Pattern(regexp = YEAR, message = "Write the year alone, such as 1974") String built,
            @NotBlank(message = "Write the day, such as 1974-06-14") @Pattern(regexp = DAY, message = "Write the day, such as 1974-06-14") String firstRegistered,
            @NotBlank(message = "Write the speed with its unit, such as 120 km/h") String topSpeed,
            @NotBlank(message = "Write how many people it seats, such as 2") String seats,
            @NotNull(message = "Write the engine") @Valid Engine engine,
            @NotNull(message = "Write the brake; when there is none, its type is none") @Valid Brake frontBrake,
            @NotNull(message = "Write the brake; when there is none, its type is none") @Valid Brake rearBrake,
            @NotBlank(message = "Write yes or no") String linkedBrakes,
            @NotNull(message = "Write the wheel") @Valid Wheel frontWheel,
            @NotNull(message = "Write the wheel") @Valid Wheel rearWheel,
            @NotBlank(message = "Write chain, belt, shaft or none") String drive,
            @NotBlank(message = "Write the battery's volts, such as 6, or 0 when it has no battery") String volts,
            @NotNull(message = "Write the equipment") @Valid Equipment equipment,
            @NotBlank(message = "Write known, or unknown when it was bought in without a record of its work") String history,
            @Since(2) String battery,
            @Since(2) String generator,
            @Since(2) String laidUpSince,
            @Since(2) Map<String, String> parts,
            @Since(2) @Valid AsBuilt asBuilt,
            @Since(2) List<@NotNull(message = "Write a change") @Valid Change> changes) {

        /** The same machine with other values, by field. */
        Machine with(Map<String, String> values) {
            return new Machine(marque, model, frameNumber, values.getOrDefault("engine-number", engineNumber), values.getOrDefault("kind", kind), built, firstRegistered,
                    values.getOrDefault("top-speed", topSpeed), values.getOrDefault("seats", seats), engine.with(values), frontBrake.with("front-brake", values), rearBrake.with("rear-brake", values),
                    values.getOrDefault("linked-brakes", linkedBrakes), frontWheel.with("front-wheel", values), rearWheel.with("rear-wheel", values), values.getOrDefault("drive", drive),
                    values.getOrDefault("volts", volts), equipment.with(values), history,
                    values.getOrDefault("battery", battery), values.getOrDefault("generator", generator), laidUpSince, parts(values), null, null);
        }

        /** A part that it does not have, and of which nothing is written, stays unwritten: another description may have it. */
        private Map<String, String> parts(Map<String, String> values) {
            Map<String, String> other = new LinkedHashMap<>(parts == null ? Map.of() : parts);
            values.forEach((field, value) -> {
                String part = field.startsWith("parts.") ? field.substring("parts.".length()) : null;
                if (part != null && (value.equals("yes") || other.containsKey(part))) {
                    other.put(part, value);
                }
            });
            return other;
        }
    }

    record AsBuilt(
            @NotBlank(message = "Write the title of the document about this model, or none") String document,
            String page,
            @NotBlank(message = "Write the id of the person who wrote it") String by,
            String secondedBy,
            @NotEmpty(message = "Write fields of the description and what they were, such as front-brake.type: disc") Map<String, String> facts,
            String note) { }

    record Change(
            @NotBlank(message = "Write the day, or day and time, from which the machine was so, such as 2026-11-20 09:40") String at,
            @NotBlank(message = "Write the id of the person") String by,
            @NotBlank(message = "Write the field that changed, such as front-brake.type") String field,
            @NotBlank(message = "Write its value before") String from,
            @NotBlank(message = "Write its value after") String to,
            @NotBlank(message = "Write the id of the entry of the work") String because,
            String note) { }

    record Engine(
            @NotBlank(message = "Write two-stroke, four-stroke or electric") String cycle,
            @NotBlank(message = "Write the swept volume, such as 246 cc, or 0 cc when electric") String displacement,
            @NotBlank(message = "Write how many, or 0 when electric") String cylinders,
            @NotBlank(message = "Write oil-injection, premix, wet-sump, dry-sump, total-loss or none") String oiling,
            @NotBlank(message = "Write points, magneto, electronic or none") String ignition,
            @NotBlank(message = "Write air or liquid") String cooling) {

        Engine with(Map<String, String> values) {
            return new Engine(values.getOrDefault("engine.cycle", cycle), values.getOrDefault("engine.displacement", displacement), values.getOrDefault("engine.cylinders", cylinders),
                    values.getOrDefault("engine.oiling", oiling), values.getOrDefault("engine.ignition", ignition), values.getOrDefault("engine.cooling", cooling));
        }
    }

    record Brake(
            @NotBlank(message = "Write disc, drum or none") String type,
            @NotBlank(message = "Write hydraulic, cable, rod or none") String workedBy,
            @NotBlank(message = "Write 1 or 2 for a disc brake, else 0") String discs,
            @NotBlank(message = "Write bonded, riveted, sintered or none") String lining,
            @NotBlank(message = "Write yes or no") String stopLampSwitch) {

        Brake with(String name, Map<String, String> values) {
            return new Brake(values.getOrDefault(name + ".type", type), values.getOrDefault(name + ".worked-by", workedBy), values.getOrDefault(name + ".discs", discs),
                    values.getOrDefault(name + ".lining", lining), values.getOrDefault(name + ".stop-lamp-switch", stopLampSwitch));
        }
    }

    record Wheel(
            @NotBlank(message = "Write steel or alloy") String rim,
            @NotBlank(message = "Write yes or no") String spoked,
            @NotBlank(message = "Write yes or no") String tube) {

        Wheel with(String name, Map<String, String> values) {
            return new Wheel(values.getOrDefault(name + ".rim", rim), values.getOrDefault(name + ".spoked", spoked), values.getOrDefault(name + ".tube", tube));
        }
    }

    record Equipment(
            @NotBlank(message = "Write kick, electric, both or none") String starter,
            @NotBlank(message = "Write how many, or 0 when electric or injected") String carburettors,
            @NotBlank(message = "Write manual, vacuum or none") String fuelTap,
            @NotBlank(message = "Write cable, hydraulic or none") String clutch,
            @NotBlank(message = "Write telescopic-fork, girder, leading-link, trailing-link, leaf-spring or rigid") String frontSpringing,
            @NotBlank(message = "Write twin-dampers, single-damper, plunger, leaf-spring, sprung-hub or rigid") String rearSpringing,
            @NotBlank(message = "Write yes or no") String lamps,
            @NotBlank(message = "Write yes or no") String indicators,
            @NotBlank(message = "Write yes or no") String horn,
            @NotBlank(message = "Write how many mirrors, or 0") String mirrors,
            @NotBlank(message = "Write how many stands, or 0") String stands,
            @NotBlank(message = "Write yes or no") String speedometer) {

        Equipment with(Map<String, String> values) {
            String name = "equipment.";
            return new Equipment(values.getOrDefault(name + "starter", starter), values.getOrDefault(name + "carburettors", carburettors), values.getOrDefault(name + "fuel-tap", fuelTap),
                    values.getOrDefault(name + "clutch", clutch), values.getOrDefault(name + "front-springing", frontSpringing), values.getOrDefault(name + "rear-springing", rearSpringing),
                    values.getOrDefault(name + "lamps", lamps), values.getOrDefault(name + "indicators", indicators), values.getOrDefault(name + "horn", horn),
                    values.getOrDefault(name + "mirrors", mirrors), values.getOrDefault(name + "stands", stands), values.getOrDefault(name + "speedometer", speedometer));
        }
    }

    record Maker(
            @NotNull(message = "Write the figures found, or [] when there are none") List<@NotNull(message = "Write a figure") @Valid Figure> figures,
            @NotNull(message = "Write the ids looked for and not found, or [] when there are none") List<String> noneFound) { }

    record Figure(
            @JsonProperty("for") @NotBlank(message = "Write the id of the limit it speaks to") String forLimit,
            String at, String atLeast, String atMost, String is,
            @NotBlank(message = "Write the title of the manual") String document,
            @NotBlank(message = "Write the page or section") String page,
            @NotBlank(message = "Write the id of the person who read it") String by,
            String secondedBy, String note) { }

    record LocalLaw(
            @NotNull(message = "Write the numbers that law sets, or [] when none were found") List<@NotNull(message = "Write a limit") @Valid LawLimit> limits,
            @NotNull(message = "Write the limits for which that law was searched and sets no number, or [] when there are none") List<@NotNull(message = "Write a limit") @Valid LawNone> setsNone) { }

    record LawLimit(
            @NotBlank(message = "Write the id of the limit") String limit,
            String atLeast, String atMost,
            @NotBlank(message = "Write the title of the law") String document,
            @NotBlank(message = "Write the section") String section,
            @NotBlank(message = "Write the day of the text that was read, such as 2024-12-31") @Pattern(regexp = DAY, message = "Write the day, such as 2024-12-31") String asOf,
            @NotBlank(message = "Write the id of the person who read it") String by,
            String secondedBy, String note) { }

    record LawNone(
            @NotBlank(message = "Write the id of the limit") String limit,
            @NotBlank(message = "Write the title of the law that was searched") String document,
            @NotBlank(message = "Write the section that was searched, or whole") String section,
            @NotBlank(message = "Write the day of the text that was searched, such as 2024-12-31") @Pattern(regexp = DAY, message = "Write the day, such as 2024-12-31") String asOf,
            @NotBlank(message = "Write the id of the person who searched it") String by,
            String secondedBy, String note) { }

    record Person(
            @NotBlank(message = ID_ADVICE) @Pattern(regexp = ID, message = ID_ADVICE) String id,
            @NotBlank(message = "Write the full name") String name,
            @NotBlank(message = "Write technician, inspector or lead") @Pattern(regexp = ROLE, message = "Write technician, inspector or lead") String role,
            String note) { }

    record Instrument(
            @NotBlank(message = ID_ADVICE) @Pattern(regexp = ID, message = ID_ADVICE) String id,
            @NotBlank(message = "Write the kind of instrument, such as caliper") String kind,
            @NotBlank(message = "Write its uncertainty (k = 2), such as 0.1 mm, or by-kind") String uncertainty,
            @NotBlank(message = "Write the day of its last calibration, such as 2026-03-02") @Pattern(regexp = DAY, message = "Write the day, such as 2026-03-02") String calibrated,
            @NotBlank(message = "Write the last day on which that calibration counts") @Pattern(regexp = DAY, message = "Write the day, such as 2027-03-02") String due,
            @Since(2) String certificate,
            String note) { }

    record Claim(
            @NotBlank(message = "Write new, rebuilt, original, mileage, tread or year") String claim,
            @NotBlank(message = "Write the place on the machine, such as rear-wheel/tyre") String about,
            @NotBlank(message = "Write the claim in the words it was made in") String says,
            @NotBlank(message = "Write who claims it, such as seller") String by,
            @NotNull(message = "Write the ids of the entries it rests on, or [] when there are none") List<String> supportedBy,
            String note) { }

    record Entry(
            @NotBlank(message = ID_ADVICE) @Pattern(regexp = ID, message = ID_ADVICE) String id,
            @NotBlank(message = "Write the day, or day and time, such as 2026-11-20 09:40") String at,
            @NotBlank(message = "Write the id of the person") String by,
            @Since(2) String seq,
            String corrects, String reason, String point,
            String measured, String tried, String seen, String told, String assumed, String done,
            String is, String with,
            String instrument, String foundOut,
            String inspected, String licence, String inspector, String document,
            @Since(2) String defect, @Since(2) List<String> dangers, @Since(2) String closed,
            String note, @Since(2) String noteIs) {

        /** What is written under the key of this kind of entry, or null. */
        String under(Deed deed) {
            return switch (deed) {
                case MEASURED -> measured;
                case TRIED -> tried;
                case SEEN -> seen;
                case TOLD -> told;
                case ASSUMED -> assumed;
                case DONE -> done;
                case FOUND_OUT -> foundOut;
                case INSPECTED -> inspected;
                case DEFECT -> defect;
                case CLOSED -> closed;
            };
        }
    }
}
