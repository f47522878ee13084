package piecewright.process;

/**
 * What heat makes and unmakes.
 *
 * @param colourEbc congress-wort colour so far, EBC
 * @param diastaticFraction share of the green malt's diastatic power that survives
 * @param smmFraction share of the green malt's DMS precursor (S-methylmethionine) that survives
 */
public record KilnState(double colourEbc, double diastaticFraction, double smmFraction) {}
