package chock.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** Standard output. When its reader goes away, as {@code head} does after ten lines, the rest is wanted by nobody and is dropped. */
final class Outlet extends FilterOutputStream {
    private boolean gone;

    Outlet(OutputStream to) {
        super(to);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        unlessGone(() -> out.write(bytes, from, length));
    }

    @Override
    public void write(int one) throws IOException {
        unlessGone(() -> out.write(one));
    }

    private void unlessGone(Writing writing) throws IOException {
        if (gone) {
            return;
        }
        try {
            writing.write();
        } catch (IOException e) {
            // The system's own words, and these stand in them in most languages.
            if (e.getMessage() == null || !e.getMessage().toLowerCase(Locale.ROOT).contains("pipe")) {
                throw e;
            }
            gone = true;
        }
    }

    private interface Writing {
        void write() throws IOException;
    }
}
