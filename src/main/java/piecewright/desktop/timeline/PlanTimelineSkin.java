package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.SkinBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.util.Duration;

/**
 * Draws the timeline on stacked canvases: names of lanes, the piece, and what moves over it. Each is drawn again only
 * when something it shows changed.
 */
final class PlanTimelineSkin extends SkinBase<PlanTimeline> {
    private static final double STEP = 1.4;
    private static final double MARGIN = 60;
    /** Less height than that for all lanes and nobody can read them, in sizes of text. */
    private static final double LEAST_EM = 24;

    private final Canvas names = new Canvas();
    private final Canvas piece = new Canvas();
    private final Canvas over = new Canvas();
    private final ActHandles handles;
    private final Label measure = new Label("0");
    private final ReadoutStrip strip = new ReadoutStrip();
    private final Painters painters;

    /** The piece is painted this much of the seen width too far on either side, so that it can be panned unpainted. */
    private static final double SPARE_RATIO = 0.5;

    private final Pane view = new Pane();
    private final Rectangle seen = new Rectangle();

    /** Scale of the painted piece, its pixel 0 at the left edge of the canvas. */
    private Optional<TimeScale> painted = Optional.empty();

    private Optional<TimeScale> scale = Optional.empty();
    private Optional<Instant> pointer = Optional.empty();
    private final PauseTransition settled = new PauseTransition(Duration.millis(150));
    private double pressedX;
    private double draggedX;

    PlanTimelineSkin(PlanTimeline timeline) {
        super(timeline);
        painters = new Painters(timeline.units());
        handles = new ActHandles(timeline);
        view.setManaged(false);
        view.setMouseTransparent(true);
        view.setClip(seen);
        view.getChildren().addAll(piece, handles.pane(), over);
        names.setManaged(false);
        measure.setVisible(false);
        measure.setManaged(false);
        getChildren().addAll(names, view, strip.pane(), measure);
        settled.setOnFinished(event -> draw());
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(timeline.widthProperty());
        clip.heightProperty().bind(timeline.heightProperty());
        timeline.setClip(clip);
        listen(timeline);
    }

    private void listen(PlanTimeline timeline) {
        registerChangeListener(timeline.chartProperty(), chart -> chartChanged());
        registerChangeListener(timeline.selectedActProperty(), act -> selectionChanged());
        registerChangeListener(timeline.ghostProperty(), ghost -> timeline.requestLayout());
        registerChangeListener(timeline.nowProperty(), now -> timeline.requestLayout());
        registerChangeListener(timeline.inkRoundProperty(), round -> timeline.requestLayout());
        registerChangeListener(measure.fontProperty(), font -> timeline.requestLayout());
        timeline.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        timeline.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        timeline.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        timeline.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        timeline.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        timeline.addEventHandler(MouseEvent.MOUSE_EXITED, event -> point(Optional.empty()));
        timeline.addEventHandler(KeyEvent.KEY_PRESSED, this::keyPressed);
    }

    private void chartChanged() {
        Optional<PieceChart> chart = getSkinnable().chartProperty().get();
        boolean fits = scale.isPresent()
                && chart.isPresent()
                && scale.get().x(chart.get().frame().until()) > 0
                && scale.get().x(chart.get().frame().from()) < seen.getWidth();
        if (!fits || chart.isPresent() && shown.map(PieceChart::frame).isEmpty()) scale = Optional.empty();
        else if (shown.isPresent()
                && !shown.get().frame().from().equals(chart.get().frame().from())) {
            scale = Optional.empty();
        }
        shown = chart;
        handles.show(chart);
        getSkinnable().requestLayout();
    }

    private Optional<PieceChart> shown = Optional.empty();

    private void selectionChanged() {
        PlanTimeline timeline = getSkinnable();
        timeline.chartProperty()
                .get()
                .flatMap(chart -> chart.act(timeline.selectedActProperty().get()))
                .ifPresent(act -> scale = scale.map(now -> now.showing(act.at(), seen.getWidth(), MARGIN)));
        timeline.requestLayout();
    }

    @Override
    protected void layoutChildren(double x, double y, double width, double height) {
        double em = measure.getFont().getSize();
        double stripHeight = Math.ceil(strip.pane().prefHeight(width));
        strip.pane().resizeRelocate(x, y + height - stripHeight, width, stripHeight);
        double gutter = Math.ceil(em * 4.9);
        double lanesHeight = Math.max(200, Math.floor(height - stripHeight - 4));
        double seenWidth = Math.max(50, width - gutter);
        size(names, gutter, lanesHeight);
        size(piece, seenWidth + 2 * Math.floor(seenWidth * SPARE_RATIO), lanesHeight);
        size(over, seenWidth, lanesHeight);
        names.relocate(x, y);
        view.resizeRelocate(x + gutter, y, seenWidth, lanesHeight);
        seen.setWidth(seenWidth);
        seen.setHeight(lanesHeight);
        draw();
    }

    private static void size(Canvas canvas, double width, double height) {
        if (canvas.getWidth() != width) canvas.setWidth(width);
        if (canvas.getHeight() != height) canvas.setHeight(height);
    }

    /** Paints everything anew. */
    private void draw() {
        Optional<PieceChart> chart = getSkinnable().chartProperty().get();
        if (chart.isEmpty()) {
            clear(names);
            clear(piece);
            clear(over);
            strip.show(Optional.empty());
            return;
        }
        PieceChart.Frame frame = chart.get().frame();
        TimeScale current = scale.orElseGet(() -> TimeScale.fitting(frame.from(), frame.until(), seen.getWidth()))
                .keptWithin(frame.from(), chart.get().end(), seen.getWidth());
        scale = Optional.of(current);
        clear(names);
        painters.names(drawing(names, chart.get(), current));
        TimeScale spare = current.panned(spare());
        clear(piece);
        painters.ghost(getSkinnable().ghostProperty().get());
        painters.piece(
                drawing(piece, chart.get(), spare),
                getSkinnable().selectedActProperty().get());
        handles.place(chart.get(), spare, lanes());
        painted = Optional.of(spare);
        placePiece(current);
        drawOver();
    }

    private double spare() {
        return (piece.getWidth() - seen.getWidth()) / 2;
    }

    /** Moves the painted piece to where it is to be seen; false when too little of it is painted. */
    private boolean placePiece(TimeScale current) {
        if (painted.isEmpty()) return false;
        double left = Math.rint(current.x(painted.get().leftmost()));
        if (left > 0 || left + piece.getWidth() < seen.getWidth()) return false;
        piece.relocate(left, 0);
        handles.pane().relocate(left, 0);
        return true;
    }

    /** Paints what moves without the piece moving. */
    private void drawOver() {
        clear(over);
        Optional<PieceChart> chart = getSkinnable().chartProperty().get();
        if (chart.isEmpty() || scale.isEmpty()) return;
        painters.over(
                drawing(over, chart.get(), scale.get()),
                getSkinnable().nowProperty().get(),
                pointer);
        Instant read = pointer.orElseGet(() -> selectedInstant(chart.get()));
        strip.show(Optional.of(Readout.at(chart.get(), read, getSkinnable().units())));
    }

    private Instant selectedInstant(PieceChart chart) {
        return chart.act(getSkinnable().selectedActProperty().get())
                .map(ActMark::at)
                .orElse(chart.acts().get(0).at());
    }

    private Drawing drawing(Canvas canvas, PieceChart chart, TimeScale current) {
        Font font = measure.getFont();
        return new Drawing(
                canvas.getGraphicsContext2D(),
                chart,
                current,
                lanes(),
                canvas.getWidth(),
                seen.getWidth(),
                getSkinnable().inks(),
                Font.font(font.getFamily(), Math.max(9, font.getSize() * 0.88)));
    }

    private Lanes lanes() {
        int others = getSkinnable()
                .chartProperty()
                .get()
                .map(chart -> OthersPainter.rows(chart.frame().besides()))
                .orElse(0);
        return Lanes.of(piece.getHeight(), measure.getFont().getSize(), others);
    }

    private static void clear(Canvas canvas) {
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    }

    private double localX(MouseEvent event) {
        return event.getX() - view.getLayoutX();
    }

    private void scrolled(ScrollEvent event) {
        double x = event.getX() - view.getLayoutX();
        if (event.isShiftDown() || Math.abs(event.getDeltaX()) > Math.abs(event.getDeltaY())) {
            pan(event.getDeltaX() + (event.isShiftDown() ? event.getDeltaY() : 0));
            settled.playFromStart();
        } else if (event.getDeltaY() != 0) {
            zoom(Math.pow(STEP, event.getDeltaY() / 40), x);
        }
        event.consume();
    }

    private void zoom(double factor, double x) {
        double least = getSkinnable()
                .chartProperty()
                .get()
                .map(chart -> TimeScale.fitting(chart.frame().from(), chart.end(), seen.getWidth())
                        .pixelsPerHour())
                .orElse(0.0);
        scale = scale.map(now -> now.zoomed(Math.max(factor, least / now.pixelsPerHour()), x));
        draw();
    }

    private void pan(double pixels) {
        Optional<PieceChart> chart = getSkinnable().chartProperty().get();
        if (chart.isEmpty() || scale.isEmpty()) return;
        TimeScale moved = scale.get()
                .panned(pixels)
                .keptWithin(chart.get().frame().from(), chart.get().end(), seen.getWidth());
        scale = Optional.of(moved);
        if (placePiece(moved)) drawOver();
        else draw();
    }

    /** Panned and painted anew, for names keep clear of the edges. */
    private void panned(double pixels) {
        pan(pixels);
        draw();
    }

    private void pressed(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY) return;
        getSkinnable().requestFocus();
        pressedX = localX(event);
        draggedX = pressedX;
    }

    private void dragged(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY) return;
        getSkinnable().setCursor(Cursor.CLOSED_HAND);
        pan(localX(event) - draggedX);
        draggedX = localX(event);
    }

    private void released(MouseEvent event) {
        getSkinnable().setCursor(Cursor.DEFAULT);
        if (Math.abs(localX(event) - pressedX) > 3) {
            draw();
            return;
        }
        if (localX(event) < 0) return;
        handles.at(localX(event), event.getY() - view.getLayoutY())
                .ifPresent(id -> getSkinnable().selectedActProperty().set(id));
    }

    private void moved(MouseEvent event) {
        double x = localX(event);
        point(x < 0 ? Optional.empty() : scale.map(now -> now.at(x)));
        boolean over = x >= 0 && handles.at(x, event.getY() - view.getLayoutY()).isPresent();
        getSkinnable().setCursor(over ? Cursor.HAND : Cursor.DEFAULT);
    }

    private void point(Optional<Instant> at) {
        pointer = at;
        drawOver();
    }

    private void keyPressed(KeyEvent event) {
        KeyCode code = event.getCode();
        double middle = seen.getWidth() / 2;
        if (code == KeyCode.LEFT && event.isShiftDown()) panned(MARGIN);
        else if (code == KeyCode.RIGHT && event.isShiftDown()) panned(-MARGIN);
        else if (code == KeyCode.LEFT) step(-1);
        else if (code == KeyCode.RIGHT) step(1);
        else if (code == KeyCode.HOME) step(Integer.MIN_VALUE / 2);
        else if (code == KeyCode.END) step(Integer.MAX_VALUE / 2);
        else if (code == KeyCode.PLUS || code == KeyCode.ADD || code == KeyCode.EQUALS) zoom(STEP, middle);
        else if (code == KeyCode.MINUS || code == KeyCode.SUBTRACT) zoom(1 / STEP, middle);
        else if (code == KeyCode.DIGIT0 || code == KeyCode.NUMPAD0) {
            scale = Optional.empty();
            draw();
        } else return;
        event.consume();
    }

    private void step(int by) {
        PlanTimeline timeline = getSkinnable();
        timeline.chartProperty().get().ifPresent(chart -> {
            int now = chart.indexOf(timeline.selectedActProperty().get()).orElse(by > 0 ? -1 : 0);
            int next = Math.max(0, Math.min(chart.acts().size() - 1, now + by));
            timeline.selectedActProperty().set(chart.acts().get(next).id());
        });
        handles.focus(timeline.selectedActProperty().get());
    }

    @Override
    protected double computePrefHeight(double width, double top, double right, double bottom, double left) {
        return 560;
    }

    @Override
    protected double computeMinHeight(double width, double top, double right, double bottom, double left) {
        return Math.ceil(LEAST_EM * measure.getFont().getSize() + strip.pane().prefHeight(width));
    }

    @Override
    protected double computePrefWidth(double height, double top, double right, double bottom, double left) {
        return 700;
    }

    @Override
    protected double computeMaxHeight(double width, double top, double right, double bottom, double left) {
        return Double.MAX_VALUE;
    }

    @Override
    protected double computeMaxWidth(double height, double top, double right, double bottom, double left) {
        return Double.MAX_VALUE;
    }
}
