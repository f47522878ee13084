package piecewright.process;

/**
 * The steep's part of the state. Ratios are kg per kg of initial dry matter.
 *
 * @param coreRatio water in the core, C
 * @param outerRatio water in husk, embryo and surface film, W
 * @param soakHours hours under water so far, counted as if at 15 °C (∫θ dt)
 * @param waterChanges waters used so far
 * @param chitRatio chitting progress χ from first wetting; 1 is half the corns chitted; negative when a lot is late
 */
public record SteepState(double coreRatio, double outerRatio, double soakHours, int waterChanges, double chitRatio) {}
