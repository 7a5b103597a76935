package chock.signoff;

import chock.quantity.Quantity;
import chock.quantity.UnreadableQuantity;
import chock.record.Gate;
import chock.record.Machine;
import chock.rulebook.Coordinates;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The statement that a gate was released: what is signed. Moments are in UTC, decimals are texts.
 *
 * @param chock {@code sign-off/1}
 * @param record the record, exactly
 * @param machine what it is about
 * @param gate the gate
 * @param verdict {@code released}
 * @param asOf the moment of judgement
 * @param holdsUntil last moment it is good for if nobody touches the machine
 * @param zone the workshop's time zone
 * @param place where the workshop is, for the hour of sunset; null, and not written, when its settings do not say
 * @param territory where the machine will be ridden
 * @param localCode the law in force there, in words
 * @param recordedLaw that this law was taken from the record and not checked, in words; null, and not written, where it was not
 * @param ruleBook the rule book, exactly
 * @param house the house rules, or {@code none}
 * @param findings one for each check that was asked
 * @param notAsked ids of the checks of this gate that do not apply to this machine
 * @param cautions where people get hurt
 * @param notes what should be known besides
 * @param criticalPoints where a later entry voids this
 * @param workBy who did the work
 * @param changedSince parts of the record written anew since it was last signed, by their key
 * @param deferral who decides in the end
 * @param signer who signed
 * @param signedAt when
 * @param ledger where it stands in the ledger
 * @param seal the shortest statement of it, signed by itself ({@link Seal}); small enough for a code on paper
 */
public record SignOff(String chock, OfRecord record, OfMachine machine, String gate, String verdict, String asOf, String holdsUntil, String zone,
                      @JsonInclude(JsonInclude.Include.NON_NULL) OfPlace place, String territory, String localCode,
                      @JsonInclude(JsonInclude.Include.NON_NULL) String recordedLaw, OfRuleBook ruleBook, String house, List<Found> findings, List<String> notAsked,
                      List<String> cautions, List<String> notes, List<String> criticalPoints, List<String> workBy, List<String> changedSince,
                      String deferral, Signer signer, String signedAt, Position ledger, String seal) {
    static final String FORM = "sign-off/1";
    /** The {@code typ} of its signature. */
    static final String TYP = "chock-sign-off+json";

    private static final JsonMapper JSON = JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    /**
     * @param id the record's own number
     * @param digest of its canonical form, {@code sha256:…}
     * @param file digest of the file as it lay there
     * @param items the short digest of each thing in it, by name
     */
    public record OfRecord(String id, String workshop, String digest, String file, SortedMap<String, String> items) { }

    /** What it is about. */
    public record OfMachine(String marque, String model, String frameNumber, String engineNumber, String built, String firstRegistered) {
        static OfMachine of(Machine machine) {
            return new OfMachine(machine.marque(), machine.model(), machine.frameNumber(), machine.engineNumber(), machine.built().toString(),
                    machine.firstRegistered().toString());
        }

        /** In words. */
        public String words() {
            return marque + " " + model + ", frame " + frameNumber + ", engine " + engineNumber;
        }
    }

    /** Degrees, minus to the south and to the west. */
    public record OfPlace(String latitude, String longitude) {
        static OfPlace of(Coordinates position) {
            return position == null ? null : new OfPlace(position.latitude().toString(), position.longitude().toString());
        }

        Coordinates position() {
            return new Coordinates(Quantity.parse(latitude), Quantity.parse(longitude));
        }
    }

    /** The rule book. */
    public record OfRuleBook(String version, String digest) { }

    /**
     * One check, in short.
     *
     * @param measured the deciding value at the worst place, or null
     * @param limit the deciding limit there, or null
     */
    public record Found(String check, String state, boolean critical, String says, Amount measured, Against limit, List<String> notes, List<String> evidence) { }

    /** @param uncertainty expanded, k = 2, in the same unit, or null */
    public record Amount(String value, String unit, String uncertainty) { }

    /** @param says the range allowed, in words */
    public record Against(String id, String says, String source) { }

    /** @param role {@code inspector} or {@code lead} */
    public record Signer(String name, String role, String keyId) { }

    /** @param previous digest of the line before */
    public record Position(int line, String previous) { }

    /**
     * The shortest statement of a sign-off.
     *
     * @param record number of the record
     * @param digest of the record
     */
    public record Seal(String chock, String record, String digest, String machine, String frameNumber, String engineNumber, String gate, String asOf,
                       String holdsUntil, String zone, String signer, String role) {
        static final String FORM = "seal/1";
        /** The {@code typ} of its signature. */
        static final String TYP = "chock-seal+json";

        private boolean isWhole() {
            return Stream.of(record, digest, machine, frameNumber, engineNumber, gate, asOf, holdsUntil, zone, signer, role).allMatch(Objects::nonNull)
                    && Instant.parse(asOf) != null && Instant.parse(holdsUntil) != null && ZoneId.of(zone) != null && Gate.of(gate).isPresent();
        }

        static Seal read(byte[] payload) {
            return SignOff.read(payload, Seal.class, FORM, Seal::chock, Seal::isWhole);
        }
    }

    /** What stands in a sign-off file, or empty when it is none. Nothing in it is to be believed before it is verified. */
    public static Optional<SignOff> written(byte[] file) {
        Jws jws = Jws.parse(file);
        return jws == null || !jws.typ().equals(TYP) ? Optional.empty() : Optional.ofNullable(read(jws.payload()));
    }

    byte[] bytes() {
        return Canonical.bytes(JSON.valueToTree(this));
    }

    static byte[] bytes(Seal seal) {
        return Canonical.bytes(JSON.valueToTree(seal));
    }

    /** @return null when it is not one */
    static SignOff read(byte[] payload) {
        return read(payload, SignOff.class, FORM, SignOff::chock, SignOff::isWhole);
    }

    private static <T> T read(byte[] payload, Class<T> type, String form, Function<T, String> chock, Predicate<T> isWhole) {
        try {
            T read = JSON.readValue(payload, type);
            return read != null && form.equals(chock.apply(read)) && isWhole.test(read) ? read : null;
        } catch (IOException | DateTimeException | UnreadableQuantity e) {
            // Not JSON, in letters that are none, or with words where moments stand.
            return null;
        }
    }

    /** The shortest statement of it, as it has to be. */
    Seal sealed() {
        return new Seal(Seal.FORM, record.id(), record.digest(), machine.marque() + " " + machine.model(), machine.frameNumber(), machine.engineNumber(),
                gate, asOf, holdsUntil, zone, signer.name(), signer.role());
    }

    private boolean isWhole() {
        boolean there = Stream.of(record, machine, verdict, territory, localCode, ruleBook, house, findings, notAsked, cautions, notes, criticalPoints, workBy, changedSince,
                deferral, signer, ledger, seal, gate, asOf, holdsUntil, signedAt, zone).allMatch(Objects::nonNull);
        return there && judged() != null && until() != null && Instant.parse(signedAt) != null && clock() != null && Gate.of(gate).isPresent()
                && (place == null || place.position() != null)
                && Stream.of(record.id(), record.workshop(), record.digest(), record.file(), record.items(), machine.words(), machine.built(), machine.firstRegistered(),
                ruleBook.version(), ruleBook.digest(), signer.name(), signer.role(), signer.keyId()).allMatch(Objects::nonNull);
    }

    /** The moment of judgement. */
    public Instant judged() {
        return Instant.parse(asOf);
    }

    /** Last moment it is good for. */
    public Instant until() {
        return Instant.parse(holdsUntil);
    }

    /** The workshop's clock. */
    public ZoneId clock() {
        return ZoneId.of(zone);
    }
}
