package piecewright.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream whose reader may close it early, as pagers do; what it did not want to read is no failure. */
public final class ReaderMayLeave extends FilterOutputStream {
    public ReaderMayLeave(OutputStream stream) {
        super(stream);
    }

    @Override
    public void write(int octet) throws IOException {
        write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public void write(byte[] octets, int from, int length) throws IOException {
        try {
            out.write(octets, from, length);
        } catch (IOException failed) {
            if (!String.valueOf(failed.getMessage()).contains("Broken pipe")) throw failed;
        }
    }
}
