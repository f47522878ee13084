package piecewright.app.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.store.StoreException;
import piecewright.text.Phrases;
import piecewright.text.Quoted;

/** Reads files one by one; one that cannot be read is left out and told of, whatever it holds. Scratch of one reading. */
public final class EachFile {
    private final List<String> refusals = new ArrayList<>();

    /** Reads a file. */
    public interface Reader<T> {
        T read(Path file) throws StoreException;
    }

    /** What the file holds; empty when it cannot be read. */
    public <T> Optional<T> read(Path file, Reader<T> reader) {
        try {
            return Optional.of(reader.read(file));
        } catch (StoreException unreadable) {
            refusals.add(String.valueOf(unreadable.getMessage()));
        } catch (RuntimeException unforeseen) { // what no reader foresaw must not keep the other files away either
            refusals.add(Phrases.say("keeping.unforeseen", file.toString(), Quoted.shortly(unforeseen.toString())));
        }
        return Optional.empty();
    }

    /** Notes that a file is left out, and why. */
    public void leaveOut(String sentence) {
        refusals.add(sentence);
    }

    /** A sentence for each file that was left out: which, why and how to mend it. */
    public List<String> refusals() {
        return List.copyOf(refusals);
    }
}
