package chock.cli;

import chock.board.Address;
import chock.board.Board;
import chock.board.DemoKeys;
import chock.board.Judging;
import chock.board.Shop;
import chock.board.store.Store;
import chock.record.UnusableInput;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The web board, and taking records in and out of its store. */
@Command(name = "board", description = "Serves every machine of the shop as web pages, and what holds it.")
final class BoardCommand implements Callable<Integer> {
    private static final String STORE = "Folder of the store, or jdbc:postgresql://HOST/DATABASE; chock-board when left out.";

    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private ShopOption shop;

    @Option(names = "--store", paramLabel = "WHERE", defaultValue = "chock-board", description = STORE)
    private String store;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "7171", description = "Port to listen on; 7171 when left out, 0 for any free one.")
    private int port;

    @Option(names = "--listen", paramLabel = "HOST", defaultValue = "127.0.0.1", description = "Address to listen on; this machine alone when left out. Others need --tls or --behind-proxy.")
    private String listen;

    @Option(names = "--address", paramLabel = "URL", description = "The address people type, such as https://board.example.")
    private String address;

    @Option(names = "--tls", paramLabel = "FILE", description = "Certificate and key, PKCS#12; its passphrase is read from the file CHOCK_TLS_PASSPHRASE_FILE names.")
    private String tls;

    @Option(names = "--behind-proxy", description = "A reverse proxy stands in front, ends TLS and names the caller.")
    private boolean behindProxy;

    @Option(names = "--zone", paramLabel = "ZONE", defaultValue = "Europe/London", description = "The workshop's time zone, such as Europe/London, for the list and the journal.")
    private String zone;

    @Option(names = "--demo", description = "Fill an empty store with seventy invented machines.")
    private boolean demo;

    @Mixin private HouseOption house;

    BoardCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() throws InterruptedException {
        Address where = new Address(listen, port, origin(), tls == null ? null : Path.of(tls), tls == null ? null : passphrase(), behindProxy);
        ZoneId clockFace = zone();
        Map<String, String> passphrases = demo ? demoKeys() : Map.of();
        chock.signoff.Shop workshop = workshop();
        boolean empty = Store.isNew(store);
        Store opened = Store.open(store);
        if (empty) {
            bench.say(madeNew(store));
        }
        CountDownLatch stopped = new CountDownLatch(1);
        try (Board board = board(opened, workshop, where, clockFace)) {
            board.firstSecret().ifPresent(secret -> bench.say("First start. Sign in as lead with this password, once: " + secret));
            if (demo) {
                board.demo().forEach((id, secret) -> bench.say("Demo: sign in as " + id + " with this password, once: " + secret));
                passphrases.forEach((id, words) -> bench.say("Demo: the key of " + id + " opens with: " + words));
            }
            bench.say("The board is at " + (where.origin() != null ? where.origin() : "http://127.0.0.1:" + board.port()) + "/ ; stop it with Ctrl+C.");
            bench.err().flush();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                board.close();
                bench.err().flush();
                stopped.countDown();
            }, "stop"));
            stopped.await();
        }
        return Bench.RELEASED;
    }

    // Without --store it lies in the current folder: from another one, the shop's machines would seem to be gone.
    private static String madeNew(String store) {
        return "New store, empty: " + Store.absolute(store);
    }

    /** The settings named, else those in the folder of the store, else none. */
    private chock.signoff.Shop workshop() {
        Path beside = beside();
        return shop.isGiven(bench) ? Workshop.of(shop, bench) : beside != null && Files.exists(beside) ? chock.signoff.Shop.of(beside) : null;
    }

    private Path beside() {
        return store.startsWith("jdbc:") ? null : Path.of(store, "shop.yaml");
    }

    private Map<String, String> demoKeys() {
        boolean untouched = beside() != null && !shop.isGiven(bench) && !Files.exists(beside()) && !Files.exists(Path.of(store, "board.sqlite"));
        return untouched ? DemoKeys.make(Path.of(store), bench.clock()) : Map.of();
    }

    private Board board(Store opened, chock.signoff.Shop workshop, Address where, ZoneId clockFace) {
        try {
            return new Board(opened, workshop == null ? house.inForce(bench) : Workshop.book(workshop, house, bench), workshop, where, bench.clock(), clockFace, Chock.Version.number(), line -> {
                bench.err().print(line + "\n");
                bench.err().flush();
            });
        } catch (RuntimeException e) {
            opened.close();
            throw e;
        }
    }

    private URI origin() {
        try {
            return address == null ? null : URI.create(address.replaceFirst("/$", ""));
        } catch (IllegalArgumentException e) {
            throw UnusableInput.of("--address " + address, "this is not an address", "Write it as https://board.example");
        }
    }

    private ZoneId zone() {
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException e) {
            throw UnusableInput.of("--zone " + zone, "this is not a time zone", "Write a zone by its place, such as Europe/London");
        }
    }

    private static String passphrase() {
        String file = System.getenv("CHOCK_TLS_PASSPHRASE_FILE");
        try {
            return Files.readString(Path.of(file == null ? "" : file)).strip();
        } catch (IOException e) {
            throw UnusableInput.of("CHOCK_TLS_PASSPHRASE_FILE", "the passphrase of the certificate cannot be read", "Name a file that holds it and that only this user may read");
        }
    }

    /** Takes record files into the store. */
    @Command(name = "take", description = "Takes record files into the store. The board need not run.")
    static final class Take implements Callable<Integer> {
        private final Bench bench;

        @Mixin private HelpOption help;

        @Option(names = "--store", paramLabel = "WHERE", defaultValue = "chock-board", description = STORE)
        private String store;

        @Parameters(arity = "1..*", paramLabel = "RECORD", description = "Record files, YAML or JSON; NDJSON with one record a line when the name ends in .ndjson.")
        private List<String> files;

        Take(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            int status = Bench.RELEASED;
            boolean empty = Store.isNew(store);
            try (Store opened = Store.open(store)) {
                if (empty) {
                    bench.say(madeNew(store));
                }
                Shop shop = new Shop(opened, new Judging(new HouseOption().inForce(bench)), bench.clock());
                for (String file : files) {
                    status = Math.max(status, take(shop, file));
                }
            }
            return status;
        }

        private int take(Shop shop, String file) {
            int status = Bench.RELEASED;
            int line = 0;
            List<byte[]> records;
            try {
                byte[] bytes = file.endsWith(".ndjson") ? bench.readAll(file) : bench.read(file);
                records = file.endsWith(".ndjson") ? new String(bytes, java.nio.charset.StandardCharsets.UTF_8).lines().map(one -> one.getBytes(java.nio.charset.StandardCharsets.UTF_8)).toList() : List.of(bytes);
            } catch (UnusableInput e) {
                return bench.refuse(e);
            }
            for (byte[] record : records) {
                line++;
                String name = Bench.name(file) + (file.endsWith(".ndjson") ? " record " + line : "");
                try {
                    bench.print(shop.take(name, record, "command line", null).machine() + "\n");
                } catch (UnusableInput e) {
                    status = bench.refuse(e);
                } catch (Shop.Taken e) {
                    bench.say(name + ": " + e.getMessage());
                    status = Bench.UNUSABLE;
                }
            }
            return status;
        }
    }

    /** Gives records out of the store. */
    @Command(name = "give", description = "Prints records of the store: one as YAML, all or several as NDJSON.")
    static final class Give implements Callable<Integer> {
        private final Bench bench;

        @Mixin private HelpOption help;

        @Option(names = "--store", paramLabel = "WHERE", defaultValue = "chock-board", description = STORE)
        private String store;

        @Parameters(arity = "0..*", paramLabel = "ID", description = "Numbers of records; all when left out.")
        private List<String> ids;

        Give(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() throws IOException {
            int status = Bench.RELEASED;
            try (Store opened = Store.existing(store)) {
                List<String> asked = ids == null ? opened.read(lines -> lines.records().ids()) : ids;
                for (String id : asked) {
                    var kept = opened.read(lines -> lines.records().find(id));
                    if (kept.isEmpty()) {
                        bench.say("There is no record " + id + " in this store.");
                        status = Bench.UNUSABLE;
                    } else {
                        bench.print(ids != null && ids.size() == 1 ? new YAMLMapper().writeValueAsString(kept.get().record()) : kept.get().record() + "\n");
                    }
                }
            }
            return status;
        }
    }

    /** Copies the store while the board runs. */
    @Command(name = "copy", description = "Copies a store in a folder into one file, also while the board runs.")
    static final class Copy implements Callable<Integer> {
        @Mixin private HelpOption help;

        @Option(names = "--store", paramLabel = "WHERE", defaultValue = "chock-board", description = STORE)
        private String store;

        @Parameters(paramLabel = "FILE", description = "A new file, such as backup/board.sqlite.")
        private String file;

        @Override
        public Integer call() {
            try (Store opened = Store.existing(store)) {
                opened.copyTo(Path.of(file));
            }
            return Bench.RELEASED;
        }
    }
}
