package chock.assess.facts;

/** Something is proven that keeps a gate open although a fault is known: an empty tank cannot leak. */
public record Excepted(String name) { }
