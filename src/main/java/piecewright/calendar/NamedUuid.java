package piecewright.calendar;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.UUID;

/** UUIDs and fingerprints that follow from names alone. */
final class NamedUuid {
    private NamedUuid() {}

    /** RFC 4122 version 5: the same batch and key give the same UUID on every machine. */
    static UUID of(UUID batch, String key) {
        byte[] name = key.getBytes(StandardCharsets.UTF_8);
        ByteBuffer input = ByteBuffer.allocate(16 + name.length);
        input.putLong(batch.getMostSignificantBits())
                .putLong(batch.getLeastSignificantBits())
                .put(name);
        ByteBuffer hash = ByteBuffer.wrap(digest("SHA-1", input.array()));
        long high = hash.getLong() & ~0xF000L | 0x5000L;
        long low = hash.getLong() & 0x3FFF_FFFF_FFFF_FFFFL | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }

    /** 32 hexadecimal digits that differ when the text differs. */
    static String fingerprint(String text) {
        byte[] hash = digest("SHA-256", text.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(hash, 0, 16);
    }

    private static byte[] digest(String algorithm, byte[] input) {
        try {
            return MessageDigest.getInstance(algorithm).digest(input);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has " + algorithm, missing);
        }
    }
}
