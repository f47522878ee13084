package piecewright.process;

/**
 * Growth's part of the state.
 *
 * @param growthRatio P, 1 at full modification; the mean acrospire as a share of the corn is about P
 * @param rootletDays days since chit, counted as if at 15 °C
 */
public record GrowthState(double growthRatio, double rootletDays) {
    public GrowthState withGrowthRatio(double changedRatio) {
        return new GrowthState(changedRatio, rootletDays);
    }
}
