package piecewright.ensemble;

import java.util.Objects;

/**
 * A change that was tried: planned again with it and followed again through as many realities.
 *
 * @param softFraction chance that every act stays within its soft window then
 */
public record Help(Remedy remedy, double softFraction) {
    public Help {
        Objects.requireNonNull(remedy);
    }
}
