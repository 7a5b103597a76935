package chock.assess.facts;

/** A fault worked out from earlier readings that ended since: a part was mended, or the cause was found to be no defect. */
public record SettledSince(Judgement fault) { }
