package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder in which the board finds a key by its id. */
class KeyRackTest {
    private static final char[] PASSPHRASE = "three words and a number 7".toCharArray();

    @TempDir private Path folder;
    private final SigningKey ida = SigningKey.create();
    private KeyRack rack;
    private Path keys;

    @BeforeEach
    void set_up() throws IOException {
        Path file = Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON);
        rack = KeyRack.of(Shop.of(file));
        keys = folder.resolve("keys");
    }

    private Path keep(String name, SigningKey key) throws IOException {
        Files.createDirectories(keys);
        return KeyFile.write(keys.resolve(name + ".pem"), key, PASSPHRASE, 1000);
    }

    @Test
    void a_key_is_found_by_its_id_whatever_its_file_is_called() throws IOException {
        assertThat(rack.folder()).isEqualTo(keys);
        assertThat(rack.holds(ida.id())).as("no folder yet").isFalse();
        keep("nora", SigningKey.create());
        assertThat(rack.holds(ida.id())).isFalse();
        keep("somebody", ida);
        assertThat(rack.holds(ida.id())).isTrue();
        assertThat(rack.unlock(ida.id(), PASSPHRASE).orElseThrow().id()).isEqualTo(ida.id());
        assertThat(rack.unlock(ida.id(), "three words and a number 8".toCharArray())).isEmpty();
    }

    @Test
    void a_public_half_without_its_key_and_a_file_that_is_none_open_nothing() throws IOException {
        keep("ida", ida);
        Files.writeString(keys.resolve("aaa.pem.jwk"), "this is no key");
        Files.writeString(keys.resolve("notes.txt"), Files.readString(keys.resolve("ida.pem.jwk")));
        assertThat(rack.holds(ida.id())).isTrue();
        Files.delete(keys.resolve("ida.pem"));
        assertThat(rack.holds(ida.id())).isFalse();
        assertThatThrownBy(() -> rack.unlock(ida.id(), PASSPHRASE)).isInstanceOf(NotSigned.class)
                .hasMessage("the file of the key " + ida.id() + " is not in the folder keys of this workshop");
    }

    @Test
    void a_key_that_lies_beside_the_public_half_of_another_signs_nothing() throws IOException {
        keep("ida", ida);
        Files.delete(keys.resolve("ida.pem"));
        Files.delete(keep("tom", SigningKey.create()));
        Files.move(keys.resolve("tom.pem"), keys.resolve("ida.pem"));
        assertThatThrownBy(() -> rack.unlock(ida.id(), PASSPHRASE)).isInstanceOf(NotSigned.class)
                .hasMessage("the file ida.pem holds another key than ida.pem.jwk beside it says");
    }
}
