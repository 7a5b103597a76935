package chock.signoff;

import chock.figure.BadFigureInput;
import chock.figure.Daylight;
import chock.quantity.Quantity;
import chock.record.Fault;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.Coordinates;
import chock.rulebook.RuleBook;
import chock.rulebook.Sheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * The settings of a workshop.
 *
 * @param file where they stand
 * @param workshop its name, as in its job records
 * @param zone its time zone
 * @param trust the trust list
 * @param ledger the ledger
 * @param house the house rules its sign-offs are bound to, or null for none
 * @param place where it is, for the hour of sunset; null when it does not say
 * @param instruments its register of instruments, or null for none
 */
public record Shop(Path file, String workshop, ZoneId zone, Path trust, Path ledger, House house, Coordinates place, Path instruments) {
    static final String NO_HOUSE = "none";

    private static final String FORM = "shop/1";

    /** Settings to fill in. */
    public static final String SKELETON = """
            # The settings of a workshop. Give them with --shop FILE, or once and for all in CHOCK_SHOP.
            chock: shop/1
            workshop: Hollow Vale Motor Works   # as in its job records
            zone: Europe/London
            trust: trust.json                   # whose keys are believed; written by 'chock keys'
            ledger: ledger.txt                  # what was signed, refused and voided; written by chock alone
            house: none                         # or {folder: house, digest: sha256:...}
            instruments: none                   # or instruments.yaml: calibrations, and what was found out about each
            # place: {latitude: 52.1 °, longitude: -1.2 °}    minus is south and west; daylight then counts until sunset there
            """;

    /**
     * House rules.
     *
     * @param folder where they lie
     * @param digest what they must be, {@code sha256:…}
     */
    public record House(Path folder, String digest) { }

    /** @throws UnusableInput with every fault, each with its line */
    public static Shop of(Path file) {
        List<Fault> faults = new ArrayList<>();
        Sheet sheet = Sheet.one(file.toString(), new String(Disk.read(file), StandardCharsets.UTF_8), faults);
        Shop shop = sheet == null ? null : read(file, sheet);
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return shop;
    }

    private static Shop read(Path file, Sheet sheet) {
        TrustList.form(sheet, FORM);
        String workshop = sheet.text("workshop");
        ZoneId zone = sheet.as("zone", Shop::zone);
        Path trust = sheet.as("trust", name -> beside(file, name));
        Path ledger = sheet.as("ledger", name -> beside(file, name));
        House house = house(file, sheet);
        Coordinates place = sheet.has("place") ? place(sheet) : null;
        if (trust != null && trust.equals(ledger)) {
            sheet.fault("ledger", "it is the same file as the trust list", "Give each a file of its own.");
        }
        String register = sheet.has("instruments") ? sheet.text("instruments") : "none";
        Path instruments = register == null || register.equals("none") ? null : sheet.as("instruments", name -> beside(file, name));
        sheet.done();
        return new Shop(file, workshop, zone, trust, ledger, house, place, instruments);
    }

    private static Coordinates place(Sheet sheet) {
        Sheet below = sheet.sheet("place");
        Quantity latitude = below.as("latitude", Quantity::parse);
        Quantity longitude = below.as("longitude", Quantity::parse);
        below.done();
        if (latitude != null && longitude != null) {
            try {
                Daylight.check(latitude, longitude);
                return new Coordinates(latitude, longitude);
            } catch (BadFigureInput e) {
                sheet.fault("place", e.getMessage(), "Write {latitude: 52.1 °, longitude: -1.2 °}.");
            }
        }
        return null;
    }

    /**
     * A rule book with this workshop's register at hand.
     *
     * @throws UnusableInput when the register cannot be used
     */
    public RuleBook equip(RuleBook book) {
        return instruments == null ? book : book.withRegister(instruments);
    }

    private static House house(Path file, Sheet sheet) {
        if (!sheet.isMapping("house")) {
            sheet.as("house", word -> {
                if (!word.equals("none")) {
                    throw new IllegalArgumentException("'" + word + "': write none, or {folder: house, digest: sha256:...}");
                }
                return word;
            });
            return null;
        }
        Sheet below = sheet.sheet("house");
        Path folder = below.as("folder", name -> beside(file, name));
        String digest = below.as("digest", text -> {
            if (!text.matches("sha256:[0-9a-f]{64}")) {
                throw new IllegalArgumentException("'" + text + "': write sha256: and the 64 figures of the digest");
            }
            return text;
        });
        below.done();
        return new House(folder, digest);
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("'" + text + "' is not a time zone; write it as Europe/London", e);
        }
    }

    private static Path beside(Path file, String name) {
        try {
            return Disk.folder(file).resolve(name).normalize();
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("'" + name + "' is not the name of a file", e);
        }
    }

    /**
     * The one place that says whether a rule book is the one this shop signs by.
     *
     * @return what a sign-off carries as {@code house}
     * @throws NotSigned when it is another
     */
    String houseOf(RuleBook book) {
        if (!book.asleep().isEmpty() || !book.digest().startsWith("sha256:")) {
            throw new NotSigned("this rule book is changed for trial (" + book.digest() + "); nothing is signed by it");
        }
        HouseBook inForce = book.house().orElse(null);
        if (house == null && inForce == null) {
            return NO_HOUSE;
        }
        if (house == null) {
            throw new NotSigned(file + " says house: none, and the rule book at hand has the house rules '" + inForce.name() + "'");
        }
        if (inForce == null) {
            throw new NotSigned(file + " binds this workshop to the house rules in " + house.folder() + ", and the rule book at hand is without them");
        }
        if (!inForce.digest().equals(house.digest())) {
            throw new NotSigned(file + " binds this workshop to house rules with the digest " + house.digest() + "; those in " + inForce.folder() + " have " + inForce.digest()
                    + ". Look at what changed in them; when it is right, write the new digest into the file");
        }
        return Rejudged.words(inForce);
    }
}
