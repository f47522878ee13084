package piecewright.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where the workspace lies when nobody says otherwise: where programs of this system keep what belongs to people. */
public final class WorkspacePlace {
    private static final String NAME = "piecewright";

    private WorkspacePlace() {}

    /**
     * The usual folder.
     *
     * @param environment variables of the process
     * @param system name of the operating system, as Java tells it
     * @param home the person's own folder
     */
    public static Path usual(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(NAME);
        }
        if (name.startsWith("windows")) {
            return given(environment, "APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve(NAME);
        }
        return given(environment, "XDG_DATA_HOME")
                .orElse(home.resolve(".local").resolve("share"))
                .resolve(NAME);
    }

    /** The folder a variable names; one that is no whole path does not count, as the XDG base directories ask. */
    private static Optional<Path> given(Map<String, String> environment, String variable) {
        try {
            return Optional.ofNullable(environment.get(variable)).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException noPath) {
            return Optional.empty();
        }
    }
}
