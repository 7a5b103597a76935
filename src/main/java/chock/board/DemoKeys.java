package chock.board;

import chock.record.UnusableInput;
import chock.signoff.KeyFile;
import chock.signoff.Role;
import chock.signoff.Shop;
import chock.signoff.Signers;
import chock.signoff.SigningKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;

/** Settings, keys and trust list of the demo shop, so that signing can be tried. */
public final class DemoKeys {
    private DemoKeys() { }

    /**
     * Makes them in a folder that has none.
     *
     * @return the passphrase of each key, by the id of whose it is
     * @throws UnusableInput when they cannot be written there
     */
    public static Map<String, String> make(Path folder, Clock clock) {
        Path keys = folder.resolve("keys");
        Path settings = folder.resolve("shop.yaml");
        try {
            Files.createDirectories(keys);
            Files.writeString(settings, Shop.SKELETON);
        } catch (IOException e) {
            throw UnusableInput.of(folder.toString(), "the keys of the demo cannot be written there", "Name a folder this user may write to with --store");
        }
        Shop shop = Shop.of(settings);
        LocalDate last = clock.instant().atZone(ZoneOffset.UTC).toLocalDate().plusYears(1);
        SigningKey lead = SigningKey.create();
        Map<String, String> passphrases = new TreeMap<>();
        passphrases.put("lead", Passwords.oneTime());
        passphrases.put("ida", Passwords.oneTime());
        SigningKey ida = SigningKey.create();
        Signers.trust(shop, KeyFile.write(keys.resolve("lead.pem"), lead, passphrases.get("lead").toCharArray()), "Shop lead", Role.LEAD, null, last, lead, clock);
        Signers.trust(shop, KeyFile.write(keys.resolve("ida.pem"), ida, passphrases.get("ida").toCharArray()), "Ida Marrow", Role.INSPECTOR, null, last, lead, clock);
        return passphrases;
    }
}
