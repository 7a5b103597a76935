package chock.board;

import chock.record.UnusableInput;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * Where the board listens, and under which address people reach it.
 *
 * @param listen host listened on
 * @param port port listened on, 0 for any that is free
 * @param origin the address people type, such as {@code https://board.example}, or null for this machine alone
 * @param certificate PKCS#12 file for TLS, or null
 * @param passphrase of that file, or null
 * @param behindProxy whether a reverse proxy stands in front, which ends TLS and names the caller
 */
public record Address(String listen, int port, URI origin, Path certificate, String passphrase, boolean behindProxy) {

    /**
     * @throws UnusableInput when others could reach it in plain text
     */
    public Address {
        if (port < 0 || port > 65_535) {
            throw UnusableInput.of("--port " + port, "there is no such port", "Write a number from 0 to 65535");
        }
        if (!loopback(listen) && certificate == null && !behindProxy) {
            throw UnusableInput.of("--listen " + listen, "others could read passwords on their way", "Add --tls FILE, or --behind-proxy with --address https://…, or listen on 127.0.0.1");
        }
        if ((!loopback(listen) || behindProxy) && (origin == null || !"https".equals(origin.getScheme()) || origin.getHost() == null)) {
            throw UnusableInput.of("--address", "the address under which people reach the board is missing", "Write it as https://board.example");
        }
        if (certificate != null && !Files.isReadable(certificate)) {
            throw UnusableInput.of(certificate.toString(), "the certificate cannot be read", "Name a PKCS#12 file this user may read");
        }
    }

    /** On this machine alone. */
    public static Address here(int port) {
        return new Address("127.0.0.1", port, null, null, null, false);
    }

    private static boolean loopback(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw UnusableInput.of("--listen " + host, "there is no such host", "Write 127.0.0.1, or an address of this machine");
        }
    }

    /** Whether browsers come by TLS. */
    boolean secure() {
        return certificate != null || behindProxy;
    }

    /** What may stand in a Host header; anything else comes from a name that was turned to this machine. */
    Set<String> hosts(int actualPort) {
        return origin == null ? Set.of("127.0.0.1:" + actualPort, "localhost:" + actualPort, "[::1]:" + actualPort) : Set.of(origin.getAuthority());
    }
}
