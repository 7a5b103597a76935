package chock.board;

import chock.board.store.Accounts.Account;
import chock.board.store.Kept;
import chock.board.store.Photos.Photo;
import chock.board.store.Store;
import chock.record.UnusableInput;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Photos to entries. They prove nothing and change no verdict; they show what an entry speaks of. */
final class Album {
    private static final int MOST = 20;

    private final Store store;
    private final Clock clock;

    Album(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** @param hadPosition whether the file said where it was taken, which was left out */
    record Added(Photo photo, boolean hadPosition) { }

    /**
     * Adds a photo to an entry; the same one twice is there once.
     *
     * @throws UnusableInput when it is no photo that can be kept
     */
    Added add(Kept kept, String entry, byte[] file, Account by) {
        if (kept.entries().stream().noneMatch(e -> e.get("id").textValue().equals(entry))) {
            throw Refusal.notFound();
        }
        Picture picture = Picture.of(file);
        String digest = store.keepPhoto(picture.jpeg());
        Instant now = clock.instant();
        Photo photo = new Photo(kept.id(), entry, digest, picture.width(), picture.height(), picture.jpeg().length, by.id(), now);
        return store.write(lines -> {
            if (lines.photos().of(kept.id()).stream().filter(p -> p.entry().equals(entry)).count() >= MOST) {
                throw UnusableInput.of(entry, "it has " + MOST + " photos already", "Write another entry for more");
            }
            if (lines.photos().add(photo)) {
                lines.events().add(now, by.id(), "photo added", kept.id(), entry + ": sha256:" + digest);
            }
            return new Added(photo, picture.hadPosition());
        });
    }

    /** Those of a machine by entry. */
    Map<String, List<Photo>> of(String machine) {
        return store.read(lines -> lines.photos().of(machine)).stream().collect(Collectors.groupingBy(Photo::entry));
    }

    /** The bytes of a photo of this machine; of no other, whatever digest is named. */
    Optional<byte[]> bytes(String machine, String digest) {
        return store.read(lines -> lines.photos().find(machine, digest)).flatMap(photo -> store.photo(photo.digest()));
    }
}
