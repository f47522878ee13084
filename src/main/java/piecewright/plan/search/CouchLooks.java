package piecewright.plan.search;

import piecewright.plan.CouchRules;

/**
 * What it costs to leave a hot couch alone: more once it may be hot.
 *
 * @param packedMinute when it was packed
 */
record CouchLooks(CouchRules rules, int packedMinute) implements TurnChains.Gaps {
    @Override
    public double costMinutes(int fromMinute, int untilMinute) {
        return rules.checkSlip((untilMinute - packedMinute) / 60.0).costMinutes((untilMinute - fromMinute) / 60.0);
    }

    @Override
    public TurnChains.Gaps ofLaidAt(int startMinute) {
        return new CouchLooks(rules, startMinute);
    }
}
