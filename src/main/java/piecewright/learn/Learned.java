package piecewright.learn;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import piecewright.belief.Belief;

/**
 * What one lot or one household's kit has taught, batch by batch; each batch starts from what the one before left.
 *
 * @param chapters in the order they were learned, no batch twice
 */
public record Learned(List<Chapter> chapters) {
    /** Most batches remembered one by one; older ones live on in what the later ones started from. */
    public static final int MOST_CHAPTERS = 50;

    public Learned {
        chapters = List.copyOf(chapters);
        if (chapters.stream().map(Chapter::batch).distinct().count() < chapters.size()) {
            throw new IllegalArgumentException("a batch must not teach twice");
        }
    }

    /** What was believed after one batch. */
    public record Chapter(UUID batch, Instant learnedAt, Belief belief) {
        public Chapter {
            Objects.requireNonNull(batch);
            Objects.requireNonNull(learnedAt);
            Objects.requireNonNull(belief);
        }
    }

    public static Learned nothing() {
        return new Learned(List.of());
    }

    /** What is believed now, given what the files state of things no batch told of; things renamed are forgotten. */
    public Belief believed(Belief stated) {
        return stated.knowing(told());
    }

    /** What batches told, as the last of them left it. */
    public Belief told() {
        return chapters.isEmpty()
                ? Belief.nothing()
                : chapters.get(chapters.size() - 1).belief();
    }

    /**
     * What a batch starts from: everything but its own chapter, so that learning from it again replaces what it taught
     * before. Empty when later batches already started from it.
     */
    public Optional<Belief> startFor(UUID batch, Belief stated) {
        for (int i = 0; i < chapters.size(); i++) {
            if (!chapters.get(i).batch().equals(batch)) continue;
            if (i < chapters.size() - 1) return Optional.empty();
            return Optional.of(new Learned(chapters.subList(0, i)).believed(stated));
        }
        return Optional.of(believed(stated));
    }

    /** With what a batch left, in place of what the same batch left before. */
    public Learned with(Chapter chapter) {
        List<Chapter> more = new ArrayList<>(chapters);
        more.removeIf(each -> each.batch().equals(chapter.batch()));
        more.add(chapter);
        return new Learned(more.subList(Math.max(0, more.size() - MOST_CHAPTERS), more.size()));
    }
}
