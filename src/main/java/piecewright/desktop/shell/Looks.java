package piecewright.desktop.shell;

import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** How everything looks: light or dark, and how large its text is. */
public record Looks(Theme theme, int textPercent) {
    private static final int USUAL_PERCENT = 100;
    private static final double USUAL_FONT = 14;
    private static final List<String> FONTS = List.of("Lato-Regular.ttf", "Lato-Semibold.ttf", "Lato-Bold.ttf");

    public Looks {
        Objects.requireNonNull(theme);
        if (textPercent < 100 || textPercent > 200) {
            throw new IllegalArgumentException("textPercent must be in 100..200: " + textPercent);
        }
    }

    /** Which tokens are used. */
    public enum Theme {
        LIGHT,
        DARK
    }

    public static Looks usual() {
        return new Looks(Theme.LIGHT, USUAL_PERCENT);
    }

    public Looks withTheme(Theme changed) {
        return new Looks(changed, textPercent);
    }

    public Looks withTextPercent(int changed) {
        return new Looks(theme, changed);
    }

    /** True when text is so large that the sheet goes below the timeline. */
    public boolean sheetBelow() {
        return textPercent >= 150;
    }

    /** Dresses a scene. */
    public void on(Scene scene) {
        loadFonts();
        scene.getStylesheets().setAll(sheet("window.css"), sheet(theme.name().toLowerCase(Locale.ROOT) + ".css"));
        scene.getRoot().setStyle("-fx-font-size: " + Math.round(USUAL_FONT * textPercent / 100) + "px;");
    }

    /** Size of text that is so much larger than usual, pixels. */
    static double em(int textPercent) {
        return USUAL_FONT * textPercent / 100;
    }

    /** Size of the text of a dressed scene, pixels. */
    static double em(Scene scene) {
        String style = scene.getRoot().getStyle().replaceAll("\\D", "");
        return style.isEmpty() ? USUAL_FONT : Double.parseDouble(style);
    }

    private static String sheet(String name) {
        return Objects.requireNonNull(Looks.class.getResource("/piecewright/desktop/" + name), name)
                .toExternalForm();
    }

    private static void loadFonts() {
        for (String name : FONTS) {
            try (InputStream font = Looks.class.getResourceAsStream("/piecewright/desktop/fonts/" + name)) {
                Font.loadFont(font, USUAL_FONT);
            } catch (java.io.IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }
}
