package piecewright.publish;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;

/** Name and app password for one server; held in memory only, wiped on close, never shown. */
public final class Account implements AutoCloseable {
    private final String name;
    private final char[] password;

    /**
     * @param name without colon or control characters
     * @param password copied; the caller may wipe its own
     */
    public Account(String name, char[] password) {
        if (name.isEmpty() || name.chars().anyMatch(sign -> sign == ':' || Character.isISOControl(sign))) {
            throw new IllegalArgumentException("name must be some text without colon");
        }
        this.name = name;
        this.password = password.clone();
    }

    /** The value of the Authorization header (RFC 7617, UTF-8). */
    String authorization() {
        CharBuffer pair = CharBuffer.allocate(name.length() + 1 + password.length);
        pair.put(name).put(':').put(password).flip();
        ByteBuffer octets = StandardCharsets.UTF_8.encode(pair);
        byte[] bytes = new byte[octets.remaining()];
        octets.get(bytes);
        String header = "Basic " + Base64.getEncoder().encodeToString(bytes);
        Arrays.fill(bytes, (byte) 0);
        Arrays.fill(octets.array(), (byte) 0);
        Arrays.fill(pair.array(), '\0');
        return header;
    }

    @Override
    public void close() {
        Arrays.fill(password, '\0');
    }

    /** Name of the account. */
    public String name() {
        return name;
    }

    @Override
    public String toString() {
        return "account " + name;
    }
}
