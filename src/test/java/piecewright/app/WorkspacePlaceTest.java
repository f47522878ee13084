package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** XDG Base Directory Specification 0.8 for Linux; the folders other programs use on macOS and Windows: memory. */
class WorkspacePlaceTest {
    private static final Path HOME = Path.of("/home/brewer");

    @Test
    void onLinuxItIsTheDataHome() {
        assertEquals(HOME.resolve(".local/share/piecewright"), WorkspacePlace.usual(Map.of(), "Linux", HOME));
        assertEquals(
                Path.of("/data/piecewright"), WorkspacePlace.usual(Map.of("XDG_DATA_HOME", "/data"), "Linux", HOME));
    }

    /** "If an implementation encounters a relative path … it should consider the path invalid and ignore it." */
    @Test
    void aRelativeOrEmptyDataHomeIsIgnored() {
        for (String wrong : new String[] {"", "data", "../data"}) {
            assertEquals(
                    HOME.resolve(".local/share/piecewright"),
                    WorkspacePlace.usual(Map.of("XDG_DATA_HOME", wrong), "FreeBSD", HOME));
        }
    }

    @Test
    void onMacAndWindowsItIsWhereProgramsThereKeepTheirs() {
        assertEquals(
                HOME.resolve("Library/Application Support/piecewright"),
                WorkspacePlace.usual(Map.of("XDG_DATA_HOME", "/data"), "Mac OS X", HOME));
        assertEquals(HOME.resolve("AppData/Roaming/piecewright"), WorkspacePlace.usual(Map.of(), "Windows 11", HOME));
        assertEquals(
                Path.of("/roaming/piecewright"),
                WorkspacePlace.usual(Map.of("APPDATA", "/roaming"), "Windows 11", HOME));
    }
}
