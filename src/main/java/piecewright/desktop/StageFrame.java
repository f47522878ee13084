package piecewright.desktop;

import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import piecewright.store.SavedWindow.Frame;

/** Where the window stands: as it was left, if a screen still shows that; else as usual, never larger than the screen. */
final class StageFrame {
    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;
    private static final double LEAST_WIDTH = 900;
    private static final double LEAST_HEIGHT = 620;

    private Optional<Frame> last;

    StageFrame(Optional<Frame> left) {
        this.last = left;
    }

    /** As it stands now, or stood when it was last seen neither filling the screen nor put away. */
    Optional<Frame> now() {
        return last;
    }

    /** Places a stage and follows it. */
    void place(Stage stage) {
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        Optional<Frame> seen = last.filter(StageFrame::isSeen);
        if (seen.isPresent()) {
            stage.setX(seen.get().x());
            stage.setY(seen.get().y());
        }
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        stage.setWidth(seen.map(Frame::width).orElse(Math.min(USUAL_WIDTH, room.getWidth())));
        stage.setHeight(seen.map(Frame::height).orElse(Math.min(USUAL_HEIGHT, room.getHeight())));
        stage.setMaximized(seen.map(Frame::full).orElse(false));
        stage.xProperty().addListener(moved -> follow(stage));
        stage.yProperty().addListener(moved -> follow(stage));
        stage.widthProperty().addListener(resized -> follow(stage));
        stage.heightProperty().addListener(resized -> follow(stage));
        stage.maximizedProperty().addListener(filled -> follow(stage));
    }

    /** Enough of its upper edge lies on a screen to take hold of. */
    private static boolean isSeen(Frame frame) {
        return !Screen.getScreensForRectangle(frame.x() + frame.width() / 2 - 40, frame.y(), 80, 20)
                .isEmpty();
    }

    private void follow(Stage stage) {
        if (stage.isIconified() || !stage.isShowing()) return;
        if (stage.isMaximized()) {
            last = last.map(frame -> new Frame(frame.x(), frame.y(), frame.width(), frame.height(), true));
        } else {
            last = Optional.of(new Frame(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), false));
        }
    }
}
