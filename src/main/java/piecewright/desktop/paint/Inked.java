package piecewright.desktop.paint;

import javafx.css.Styleable;

/** Something painted by hand whose inks a style sheet gives. */
public interface Inked extends Styleable {
    Inks inks();
}
