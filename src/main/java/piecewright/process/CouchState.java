package piecewright.process;

/**
 * The hot couch's part of the state.
 *
 * @param capacityRatio respiratory capacity R still alive, 1 at packing
 * @param indexHours couch index X, hours at 48 °C and 40 % that the couch has been worth
 */
public record CouchState(double capacityRatio, double indexHours) {
    /** Never couched. */
    public static CouchState none() {
        return new CouchState(1, 0);
    }
}
