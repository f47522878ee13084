package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.junit.jupiter.api.Test;

class ReaderMayLeaveTest {
    private static OutputStream failing(String message) {
        return new ReaderMayLeave(new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException(message);
            }
        });
    }

    @Test
    void onlyAPipeThatWasClosedIsForgiven() {
        assertDoesNotThrow(() -> failing("Broken pipe").write(1));
        assertDoesNotThrow(() -> failing("Broken pipe").write(new byte[3]));
        assertThrows(IOException.class, () -> failing("No space left on device").write(1));
        assertThrows(IOException.class, () -> failing("No space left on device").write(new byte[3]));
    }

    @Test
    void everythingElsePassesThrough() throws IOException {
        ByteArrayOutputStream received = new ByteArrayOutputStream();
        OutputStream stream = new ReaderMayLeave(received);
        stream.write(7);
        stream.write(new byte[] {8, 9, 10}, 1, 2);
        assertArrayEquals(new byte[] {7, 9, 10}, received.toByteArray());
    }
}
