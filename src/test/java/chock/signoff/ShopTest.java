package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.record.UnusableInput;
import chock.rulebook.Coordinates;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopTest {
    @TempDir private Path folder;

    @Test
    void the_skeleton_is_read_and_its_files_lie_beside_it() throws IOException {
        Path file = Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON);
        assertThat(Shop.of(file)).isEqualTo(new Shop(file, "Hollow Vale Motor Works", ZoneId.of("Europe/London"), folder.resolve("trust.json"), folder.resolve("ledger.txt"), null, null, null));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "chock: shop/1 | chock: shop/2 | 1: chock: 'shop/2': write shop/1, the only form this program reads",
        "zone: Europe/London | zone: Europe/Hollow | 3: zone: 'Europe/Hollow' is not a time zone; write it as Europe/London",
        "house: none | house: some | 6: house: 'some': write none, or {folder: house, digest: sha256:...}",
        "house: none | 'house: {folder: house, digest: 12}' | 6: house.digest: '12': write sha256: and the 64 figures of the digest",
        "ledger: ledger.txt | ledger: trust.json | 5: ledger: it is the same file as the trust list. Give each a file of its own.",
        "workshop: Hollow Vale Motor Works | workshop: | 2: workshop: a text is wanted here. Write one value.",
    })
    void wrong_settings_are_refused_with_their_line(String what, String instead, String says) throws IOException {
        Path file = Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON.replaceAll(" +#[^\n]*", "").replaceFirst("^#.*\n", "").replace(what, instead));
        assertThatThrownBy(() -> Shop.of(file)).isInstanceOf(UnusableInput.class).hasMessage(file + ":" + says);
    }

    private Path placed(String place) throws IOException {
        return Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON + "place: " + place + "\n");
    }

    @Test
    void a_workshop_may_say_where_it_is() throws IOException {
        assertThat(Shop.of(placed("{latitude: 52.1 °, longitude: -1.2 °}")).place()).isEqualTo(new Coordinates(Quantity.parse("52.1 °"), Quantity.parse("-1.2 °")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{latitude: 95 °, longitude: 0 °} | 10: place: latitude is 95°; it lies between -90° and 90°. Write {latitude: 52.1 °, longitude: -1.2 °}.",
        "{latitude: 52 °, longitude: 200 °} | 10: place: longitude is 200°; it lies between -180° and 180°. Write {latitude: 52.1 °, longitude: -1.2 °}.",
        "{latitude: 52 °} | 10: place.longitude: the key is missing. Add longitude:",
        "{latitude: 52, longitude: 0 °} | 10: place.latitude: '52': the unit is missing; write it behind the number",
    })
    void a_place_that_is_nowhere_is_refused(String place, String says) throws IOException {
        Path file = placed(place);
        assertThatThrownBy(() -> Shop.of(file)).isInstanceOf(UnusableInput.class).hasMessageContaining(file + ":" + says);
    }

    @Test
    void an_unknown_key_and_a_missing_one_are_told_together() throws IOException {
        Path file = Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON.replace("zone: Europe/London", "colour: red"));
        assertThatThrownBy(() -> Shop.of(file)).isInstanceOf(UnusableInput.class).hasMessageContaining("zone: the key is missing. Add zone:").hasMessageContaining(":4: colour: unknown key 'colour'. Known here: ");
    }

    @Test
    void a_trust_list_comes_back_as_it_was_written() {
        SigningKey key = SigningKey.create();
        TrustedKey one = new TrustedKey(key.id(), key.x(), "Ida \"the Gauge\" Marrow: #1", Role.INSPECTOR, Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2027-01-01T00:00:00Z"), Instant.parse("2026-06-01T00:00:00Z"), "lost, see note");
        assertThat(TrustList.read("t", new TrustList(List.of(one)).bytes()).keys()).containsExactly(one);
        assertThat(TrustList.read("t", new TrustList(List.of()).bytes()).keys()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"role\" : \"inspector\" | \"role\" : \"owner\" | role: 'owner': write one of inspector, lead",
        "\"crv\" : \"Ed25519\" | \"crv\" : \"P-256\" | crv: 'P-256': only Ed25519 is known here. Make a key with 'chock keys new'.",
        "\"validUntil\" : \"2027-01-01T00:00:00Z\" | \"validUntil\" : \"2027\" | validUntil: '2027' is not a moment. Write it as 2026-11-25T12:00:00Z.",
        "\"use\" : \"sig\" | \"use\" : \"sig\", \"d\" : \"AAAA\" | d: unknown key 'd'.",
        "\"kid\" : \" | \"kid\" : \"x | kid: it is not the thumbprint of this key. One of the two was changed: take the key from its owner again.",
        "\"x\" : \" | \"x\" : \"A | x: this is not an Ed25519 public key. Take the key from its owner again.",
    })
    void a_wrong_trust_list_is_refused_with_its_line(String what, String instead, String says) {
        SigningKey key = SigningKey.create();
        String good = new String(new TrustList(List.of(new TrustedKey(key.id(), key.x(), "Ida Marrow", Role.INSPECTOR, Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2027-01-01T00:00:00Z"), null, null))).bytes(), StandardCharsets.UTF_8);
        String bad = good.replace(what, instead);
        assertThat(bad).isNotEqualTo(good);
        assertThatThrownBy(() -> TrustList.read("trust.json", ShopBench.utf8(bad))).isInstanceOf(UnusableInput.class).hasMessageContaining("keys[0]." + says).hasMessageMatching("(?s)trust\\.json:\\d+: .*");
    }
}
