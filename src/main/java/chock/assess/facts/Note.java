package chock.assess.facts;

/** Something to be known besides; changes no state. */
public record Note(Required required, String text) { }
