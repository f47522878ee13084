package piecewright.publish;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** The address of a calendar collection: https, or http on this machine alone; ends in a slash. */
public record CollectionUrl(URI uri) {
    /** Why an address cannot be used. */
    public enum Refusal {
        /** Not an absolute address of a folder on a server. */
        NOT_AN_ADDRESS,
        /** Anybody on the way could read the password. */
        NOT_HTTPS,
        /** Name and password are given apart, where they are not shown or kept. */
        HOLDS_A_PASSWORD
    }

    public CollectionUrl {
        Optional<Refusal> refusal = refusalOf(uri);
        if (refusal.isPresent()) throw new IllegalArgumentException("collection address: " + refusal.get());
        if (!uri.getRawPath().endsWith("/")) uri = uri.resolve(uri.getRawPath() + "/");
    }

    /** The address as a person typed it; to be asked about with {@link #refusalOf(String)} first. */
    public static CollectionUrl of(String typed) {
        return new CollectionUrl(URI.create(typed.strip()));
    }

    /** Why this cannot be used; empty if it can. */
    public static Optional<Refusal> refusalOf(String typed) {
        try {
            return refusalOf(new URI(typed.strip()));
        } catch (URISyntaxException notAnAddress) {
            return Optional.of(Refusal.NOT_AN_ADDRESS);
        }
    }

    private static Optional<Refusal> refusalOf(URI uri) {
        if (uri.getUserInfo() != null) return Optional.of(Refusal.HOLDS_A_PASSWORD);
        String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
        boolean web = scheme.equals("https") || scheme.equals("http");
        boolean folder = uri.getRawQuery() == null && uri.getRawFragment() == null;
        if (!web || uri.getHost() == null || uri.getRawPath().isEmpty() || !folder) {
            return Optional.of(Refusal.NOT_AN_ADDRESS);
        }
        return scheme.equals("https") || isThisMachine(uri.getHost())
                ? Optional.empty()
                : Optional.of(Refusal.NOT_HTTPS);
    }

    private static boolean isThisMachine(String host) {
        return host.equalsIgnoreCase("localhost")
                || host.equals("[::1]")
                || host.matches("127(\\.(25[0-5]|2[0-4][0-9]|1?[0-9]?[0-9])){3}");
    }

    /** Where the event of this UID lies. */
    URI resource(UUID uid) {
        return uri.resolve(uid + ".ics");
    }

    /** Whether another address is on the same server, so that it may see the password. */
    boolean sameOrigin(URI other) {
        return uri.getScheme().equalsIgnoreCase(other.getScheme())
                && uri.getHost().equalsIgnoreCase(other.getHost())
                && port(uri) == port(other)
                && other.getUserInfo() == null;
    }

    private static int port(URI address) {
        if (address.getPort() >= 0) return address.getPort();
        return "https".equalsIgnoreCase(address.getScheme()) ? 443 : 80;
    }

    @Override
    public String toString() {
        return uri.toString();
    }
}
