package chock.assess.facts;

/** @param onePerson whether it declares that one person works alone */
public record WorkshopFact(boolean onePerson) { }
